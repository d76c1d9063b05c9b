// @ts-check
/**
 * A large keypad under a field marked data-keypad: below the field in the page, never over it. Typing works alike, Enter is Keep.
 * data-other names a second field of the same form, offered in place of the sign; data-aside marks a field that is not what is kept.
 * data-unit names the unit; data-units="kg/h|lb/h" offers a choice; data-no-reading offers "No reading" with a reason.
 */
import { figureIn, shown } from "./plausible.js";

const remembered = "tickover-keypad";
const rows = ["7", "8", "9", "back", "4", "5", "6", "none", "1", "2", "3", "keep", "point", "0", "sign"];
const words = /** @type {Record<string, string>} */ ({ back: "\u232b", point: ".", sign: "\u00b1" });
const spoken = /** @type {Record<string, string>} */ ({ back: "Take back the last digit", point: "Decimal point", sign: "Plus or minus" });

/** Opens the keypad where a field asks for it, unless the person has closed it for good. */
export function openKeypads() {
  document.addEventListener("focusin", (event) => {
    const field = event.target;
    if (field instanceof HTMLInputElement && field.dataset["keypad"] !== undefined && padOf(field) === null) {
      if (isClosed()) {
        offer(field);
      } else {
        open(field);
      }
    }
  });
  document.addEventListener("input", (event) => sayKeep(event.target));
  document.addEventListener("reset", (event) => setTimeout(() => afterReset(event.target)));
}

function isClosed() {
  try {
    return localStorage.getItem(remembered) === "closed";
  } catch {
    return false;
  }
}

/** @param {"open" | "closed"} how */
function remember(how) {
  try {
    localStorage.setItem(remembered, how);
  } catch {
    // Then it opens again on the next page.
  }
}

/** @param {HTMLInputElement} field @returns {HTMLElement | null} */
function padOf(field) {
  const pad = field.form?.querySelector(`.keypad[data-for="${CSS.escape(field.name)}"]`);
  return pad instanceof HTMLElement ? pad : null;
}

/** @param {HTMLInputElement} field */
function labelOf(field) {
  return field.dataset["label"] ?? field.labels?.[0]?.textContent?.trim() ?? field.getAttribute("aria-label") ?? field.name;
}

/** @param {HTMLInputElement} field */
function open(field) {
  for (const other of document.querySelectorAll(".keypad")) {
    closePad(other);
  }
  const pad = document.createElement("div");
  pad.className = "keypad";
  pad.dataset["for"] = field.name;
  pad.setAttribute("role", "group");
  pad.setAttribute("aria-label", `Keypad: ${labelOf(field)}`);
  pad.append(...units(field), ...rows.flatMap((name) => key(field, name)), close(field));
  // The press must not take the focus from the field, or the caret would be lost.
  pad.addEventListener("pointerdown", (event) => event.target instanceof HTMLButtonElement && event.preventDefault());
  field.inputMode = "none";
  (field.closest(".entry, .with-unit") ?? field).after(pad);
  sayKeep(field);
  pad.scrollIntoView({ block: "nearest" });
}

/**
 * @param {HTMLInputElement} field
 * @param {string} name
 * @returns {HTMLElement[]}
 */
function key(field, name) {
  if (name === "keep") {
    const keep = button("keep", "Keep");
    keep.type = "submit";
    keep.classList.add("go");
    return [keep];
  }
  if (name === "none") {
    return [field.dataset["noReading"] === undefined ? document.createElement("span") : noReading(field)];
  }
  const other = name === "sign" ? otherOf(field) : null;
  if (other !== null) {
    const made = button("other", other.dataset["unit"] ?? other.name);
    made.setAttribute("aria-label", labelOf(other));
    made.addEventListener("click", () => other.focus());
    return [made];
  }
  const made = button(name, words[name] ?? name);
  // Digits can be typed, so they are no stops on the way with the tab key.
  made.tabIndex = -1;
  if (spoken[name] !== undefined) {
    made.setAttribute("aria-label", spoken[name] ?? "");
  }
  made.addEventListener("click", () => press(field, name));
  return [made];
}

/** @param {HTMLInputElement} field @returns {HTMLInputElement | null} */
function otherOf(field) {
  const other = field.dataset["other"] === undefined ? null : field.form?.elements.namedItem(field.dataset["other"]);
  return other instanceof HTMLInputElement ? other : null;
}

/** @param {string} name @param {string} text */
function button(name, text) {
  const made = Object.assign(document.createElement("button"), { type: "button", className: "key", textContent: text });
  made.dataset["key"] = name;
  return made;
}

/** @param {HTMLInputElement} field @param {string} name */
function press(field, name) {
  const from = field.selectionStart ?? field.value.length;
  const to = field.selectionEnd ?? field.value.length;
  if (name === "back") {
    field.setRangeText("", from === to ? Math.max(0, from - 1) : from, to, "end");
  } else if (name === "sign") {
    const signed = /^\s*[-\u2212]/.test(field.value);
    field.value = signed ? field.value.replace(/^\s*[-\u2212]\s*/, "") : `\u2212${field.value}`;
  } else if (name !== "point" || !/[.,]/.test(field.value)) {
    field.setRangeText(name === "point" ? "." : name, from, to, "end");
  }
  field.dispatchEvent(new Event("input", { bubbles: true }));
}

/** @param {HTMLInputElement} field */
function noReading(field) {
  const made = button("none", "No reading");
  made.addEventListener("click", () => askWhy(field));
  return made;
}

/** "No reading" is a reading, with a reason. @param {HTMLInputElement} field */
function askWhy(field) {
  const pad = padOf(field);
  const there = field.form?.elements.namedItem("noReading");
  if (pad === null || there instanceof HTMLInputElement) {
    if (there instanceof HTMLInputElement) {
      there.closest("details")?.setAttribute("open", "");
      there.focus();
    }
    return;
  }
  const id = `${field.id || field.name}-why`;
  const label = Object.assign(document.createElement("label"), { htmlFor: id, textContent: "Why is there no reading?" });
  const why = Object.assign(document.createElement("input"), { id, name: "noReading", required: true, autocomplete: "off" });
  const box = Object.assign(document.createElement("div"), { className: "why" });
  box.append(label, why);
  pad.prepend(box);
  pad.dataset["needed"] = String(field.required);
  field.required = false;
  field.value = "";
  field.dispatchEvent(new Event("input", { bubbles: true }));
  why.focus();
}

/** @param {HTMLInputElement} field @returns {HTMLElement[]} */
function units(field) {
  const all = (field.dataset["units"] ?? "").split("|").map((u) => u.trim()).filter((u) => u !== "");
  if (all.length < 2) {
    return [];
  }
  const chosen = field.dataset["chosenUnit"] ?? field.dataset["unit"] ?? all[0] ?? "";
  const group = Object.assign(document.createElement("div"), { className: "seg units" });
  group.setAttribute("role", "group");
  group.setAttribute("aria-label", "Unit");
  for (const unit of all) {
    const made = Object.assign(document.createElement("button"), { type: "button", textContent: unit });
    made.setAttribute("aria-pressed", String(unit === chosen));
    made.addEventListener("click", () => choose(field, unit, group));
    group.append(made);
  }
  return [group];
}

/**
 * The unit goes into the field that data-unit-field names, where there is one, else behind the figure as one would type it.
 * @param {HTMLInputElement} field
 * @param {string} unit
 * @param {HTMLElement} group
 */
function choose(field, unit, group) {
  field.dataset["chosenUnit"] = unit;
  for (const made of group.querySelectorAll("button")) {
    made.setAttribute("aria-pressed", String(made.textContent === unit));
  }
  const place = field.form?.elements.namedItem(field.dataset["unitField"] ?? "");
  if (place instanceof HTMLInputElement || place instanceof HTMLSelectElement) {
    place.value = unit;
  } else {
    const figure = field.value.replace(/\s*[^\d.,\s\u2212+-].*$/, "").trim();
    field.value = unit === (field.dataset["unit"] ?? "") || figure === "" ? figure : `${figure} ${unit}`;
    field.setSelectionRange(figure.length, figure.length);
  }
  field.dispatchEvent(new Event("input", { bubbles: true }));
}

/** @param {EventTarget | null} target */
function sayKeep(target) {
  const field = target instanceof HTMLInputElement ? target : null;
  const keep = field === null ? null : padOf(field)?.querySelector('[data-key="keep"]');
  if (field !== null && keep) {
    const kept = field.dataset["aside"] === undefined ? field : (otherOf(field) ?? field);
    const figure = figureIn(kept.value);
    const unit = kept.dataset["chosenUnit"] ?? kept.dataset["unit"] ?? "";
    const others = [...(field.form?.querySelectorAll("input[data-keypad]:not([data-aside])") ?? [])].filter((f) => f instanceof HTMLInputElement && f !== kept && f.value.trim() !== "");
    keep.textContent = others.length > 0 ? `Keep all ${others.length + (figure === null ? 0 : 1)}` : figure === null ? "Keep" : `Keep ${shown(figure)} ${unit}`.trim();
  }
}

/** @param {HTMLInputElement} field */
function close(field) {
  const made = Object.assign(document.createElement("button"), { type: "button", className: "btn bare away", textContent: "Close the keypad" });
  made.addEventListener("click", () => {
    remember("closed");
    field.focus();
    closePad(padOf(field));
    offer(field);
  });
  return made;
}

/** @param {Element | null} pad */
function closePad(pad) {
  const form = pad?.closest("form");
  const field = form?.elements.namedItem(pad?.getAttribute("data-for") ?? "");
  if (field instanceof HTMLInputElement) {
    field.inputMode = "decimal";
    field.required ||= pad?.getAttribute("data-needed") === "true";
  }
  pad?.remove();
}

/** A way back for who closed it. @param {HTMLInputElement} field */
function offer(field) {
  if (field.parentElement?.querySelector(":scope > .keypad-offer")) {
    return;
  }
  const made = Object.assign(document.createElement("button"), { type: "button", className: "btn slim keypad-offer", textContent: "Keypad" });
  made.setAttribute("aria-label", `Keypad: ${labelOf(field)}`);
  made.addEventListener("click", () => {
    remember("open");
    made.remove();
    field.focus();
    if (padOf(field) === null) {
      open(field);
    }
  });
  field.after(made);
}

/** The next reading begins with an empty, open pad. @param {EventTarget | null} form */
function afterReset(form) {
  const pad = form instanceof HTMLFormElement ? form.querySelector(".keypad") : null;
  const field = pad === null ? null : /** @type {HTMLFormElement} */ (form).elements.namedItem(pad.getAttribute("data-for") ?? "");
  if (pad !== null && field instanceof HTMLInputElement) {
    pad.querySelector(".why")?.remove();
    field.required ||= pad.getAttribute("data-needed") === "true";
    sayKeep(field);
    if (pad.contains(document.activeElement)) {
      field.focus();
    }
  }
}
