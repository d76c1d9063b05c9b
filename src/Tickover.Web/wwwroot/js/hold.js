// @ts-check
/**
 * A button marked data-hold="1500" acts only when held that long, by finger, Space or Enter, so that a sleeve cannot do it.
 * Who cannot hold presses once, and then a second button within ten seconds.
 */

const secondPressMs = 10_000;

/** @type {{ button: HTMLButtonElement, from: number, frame: number } | null} */
let held = null;
/** @type {HTMLButtonElement | null} */
let through = null;

/** Follows every such button on the page, now and after a swap. */
export function followHolds() {
  document.addEventListener("pointerdown", (event) => event.button === 0 && begin(event.target));
  for (const name of /** @type {const} */ (["pointerup", "pointercancel"])) {
    document.addEventListener(name, stop);
  }
  document.addEventListener("keydown", (event) => {
    if ((event.key === " " || event.key === "Enter") && holdButton(event.target)) {
      event.preventDefault();
      if (!event.repeat) {
        begin(event.target);
      }
    }
  });
  document.addEventListener("keyup", (event) => {
    const button = holdButton(event.target);
    if ((event.key === " " || event.key === "Enter") && button) {
      event.preventDefault();
      if (held) {
        stop();
        offer(button);
      }
    }
  });
  document.addEventListener("click", (event) => {
    const button = holdButton(event.target);
    if (button && through !== button) {
      event.preventDefault();
      if (button.dataset["done"] === undefined) {
        offer(button);
      }
      delete button.dataset["done"];
    }
  }, { capture: true });
  // A long press on a touch screen would open a menu instead.
  document.addEventListener("contextmenu", (event) => holdButton(event.target) && event.preventDefault());
  window.addEventListener("blur", stop);
}

/** @param {EventTarget | null} target @returns {HTMLButtonElement | null} */
function holdButton(target) {
  const button = target instanceof Element ? target.closest("button[data-hold]") : null;
  return button instanceof HTMLButtonElement && !button.disabled ? button : null;
}

/** @param {EventTarget | null} target */
function begin(target) {
  const button = holdButton(target);
  if (!button || held) {
    return;
  }
  delete button.dataset["done"];
  held = { button, from: performance.now(), frame: requestAnimationFrame(step) };
}

/** @param {number} time */
function step(time) {
  if (held === null) {
    return;
  }
  const { button, from } = held;
  const part = Math.min(1, (time - from) / Number(button.dataset["hold"] || 1500));
  button.style.setProperty("--held", String(part));
  if (part < 1) {
    held.frame = requestAnimationFrame(step);
    return;
  }
  stop();
  // The click that follows the release of this press is part of it.
  button.dataset["done"] = "";
  act(button);
}

function stop() {
  if (held !== null) {
    cancelAnimationFrame(held.frame);
    held.button.style.removeProperty("--held");
    held = null;
  }
}

/** @param {HTMLButtonElement} button */
function act(button) {
  button.parentElement?.querySelector(":scope > .hold-yes")?.remove();
  through = button;
  try {
    button.click();
  } finally {
    through = null;
  }
}

/** @param {HTMLButtonElement} button */
function offer(button) {
  if (button.parentElement?.querySelector(":scope > .hold-yes")) {
    return;
  }
  const box = Object.assign(document.createElement("div"), { className: "hold-yes" });
  box.setAttribute("role", "status");
  const words = document.createElement("p");
  words.textContent = "Hold it until the ring is full. If you cannot hold, press this within 10 seconds:";
  const yes = Object.assign(document.createElement("button"), { type: "button", className: "btn big", textContent: button.dataset["holdYes"] ?? "Yes, going down now" });
  const timer = setTimeout(() => {
    if (box.contains(document.activeElement)) {
      button.focus();
    }
    box.remove();
  }, secondPressMs);
  yes.addEventListener("click", () => {
    clearTimeout(timer);
    button.focus();
    act(button);
  });
  box.append(words, yes);
  button.after(box);
}
