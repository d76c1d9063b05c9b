// @ts-check
/**
 * The pedal of a linkage: the drawing follows the handle while it is dragged. Without this the form moves it. Drawings over the
 * whole travel are fetched ahead, so that it moves while the server is away: then to the nearest that is at hand, and says so.
 */

const fragmentHeader = "X-Tickover-Fragment";
const aheadStep = 5;
const aheadAfterMs = 1_500;

/** Drawings at hand, by their address. @type {Map<string, string>} */
const atHand = new Map();

/** One drawing is fetched at a time; of the places passed meanwhile only the last counts. */
let busy = false;
let again = false;

/** Lets every pedal on the page be dragged. */
export function followPedal() {
  document.addEventListener("input", (event) => {
    if (event.target instanceof HTMLInputElement && event.target.hasAttribute("data-pedal")) {
      say(event.target);
      void draw(event.target);
    }
  });
  document.addEventListener("change", (event) => {
    if (event.target instanceof HTMLInputElement && event.target.hasAttribute("data-pedal")) {
      remember(event.target);
    }
  });
  for (const button of document.querySelectorAll("[data-pedal-go]")) {
    button.setAttribute("hidden", "");
  }
  const pedal = document.querySelector("input[data-pedal]");
  if (pedal instanceof HTMLInputElement) {
    setTimeout(() => void fetchAhead(pedal), aheadAfterMs);
  }
}

/** @param {HTMLInputElement} pedal */
function say(pedal) {
  pedal.setAttribute("aria-valuetext", `${pedal.value} per cent down`);
  const words = pedal.form?.querySelector("[data-pedal-words]");
  if (words) {
    words.textContent = `${pedal.value}\u202f%`;
  }
}

/** @param {HTMLInputElement} pedal */
async function draw(pedal) {
  if (busy) {
    again = true;
    return;
  }
  busy = true;
  do {
    again = false;
    const down = Number(pedal.value);
    const exact = await drawing(pedal, down);
    const place = document.querySelector("[data-pedal-drawing]");
    const shown = exact ?? nearest(pedal, down);
    if (place && shown) {
      place.innerHTML = shown;
    }
    document.querySelector("[data-pedal-away]")?.toggleAttribute("hidden", exact !== null);
  } while (again);
  busy = false;
}

/**
 * The drawing at one place of the pedal; null while the server is away and it is not at hand.
 * @param {HTMLInputElement} pedal
 * @param {number} down
 * @returns {Promise<string | null>}
 */
async function drawing(pedal, down) {
  const address = addressOf(pedal, down);
  const known = atHand.get(address);
  if (known !== undefined) {
    return known;
  }
  try {
    const answer = await fetch(address, { headers: { [fragmentHeader]: "drawing" } });
    if (!answer.ok) {
      return null;
    }
    const html = await answer.text();
    atHand.set(address, html);
    return html;
  } catch {
    return null;
  }
}

/** @param {HTMLInputElement} pedal @param {number} down */
function nearest(pedal, down) {
  for (let off = 1; off <= 100; off++) {
    const known = atHand.get(addressOf(pedal, down - off)) ?? atHand.get(addressOf(pedal, down + off));
    if (known !== undefined) {
      return known;
    }
  }
  return undefined;
}

/** @param {HTMLInputElement} pedal */
async function fetchAhead(pedal) {
  for (let down = 0; down <= 100; down += aheadStep) {
    if ((await drawing(pedal, down)) === null) {
      return;
    }
  }
  document.querySelector("[data-pedal-drawing]")?.setAttribute("data-pedal-drawing", "at-hand");
}

/** The address says where the pedal is, and so do the links to the other settings. @param {HTMLInputElement} pedal */
function remember(pedal) {
  history.replaceState(null, "", addressOf(pedal, Number(pedal.value)));
  for (const link of document.querySelectorAll(".linkage .seg a[href]")) {
    const address = new URL(link.getAttribute("href") ?? "", location.href);
    address.searchParams.set("down", pedal.value);
    link.setAttribute("href", address.pathname + address.search);
  }
}

/** @param {HTMLInputElement} pedal @param {number} down */
function addressOf(pedal, down) {
  const address = new URL(pedal.form?.action ?? location.href);
  for (const field of pedal.form?.querySelectorAll("input[type=hidden]") ?? []) {
    if (field instanceof HTMLInputElement) {
      address.searchParams.set(field.name, field.value);
    }
  }
  address.searchParams.set("down", String(down));
  return address.href;
}
