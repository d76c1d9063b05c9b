// @ts-check
/**
 * A tank sketched with a finger: taps and drags become figures in the form, and the server works them out as if they had been typed.
 * Nothing is computed here but where a finger is on the sheet. Without this the form does it all.
 */
import { handOver } from "./sketch-hand.js";

const fragmentHeader = "X-Tickover-Fragment";
/** What is asked while a finger still moves changes the answer alone, not the sheet beneath it. The sheet holds the second. */
const answerPart = "sketch-answer";
const saysPart = "sketch-says";
const boardPart = "sketch-board";

/** One answer is waited for at a time; of what was drawn meanwhile only the last counts. @type {{ address: string, whole: boolean, remember: boolean } | null} */
let next = null;
let busy = false;
/** A sheet came while a finger was down on the old one. */
let waiting = false;

/** Begins wherever a sheet is on the page, now and after a swap. */
export function sketchTanks() {
  if (formOf() === null) {
    return;
  }
  document.addEventListener("submit", submitted, { capture: true });
  document.addEventListener("change", (event) => {
    const field = event.target;
    if (field instanceof HTMLInputElement && field.form !== null && field.form === formOf()) {
      if (field.name === "tap" || field.name === "snap") {
        noteHow(field);
      } else {
        ask(addressOf(field.form), true, true);
      }
    }
  });
  document.addEventListener("tickover:swapped", begin);
  document.querySelector("[data-sketch-undo]")?.addEventListener("click", () => history.back());
  if (stepOf() === null) {
    history.replaceState({ sketchStep: 0 }, "");
  }
  begin();
  followAddress();
}

/** @returns {HTMLFormElement | null} */
function formOf() {
  const form = document.querySelector("form[data-sketch]");
  return form instanceof HTMLFormElement ? form : null;
}

/** @returns {number | null} */
function stepOf() {
  const step = history.state?.sketchStep;
  return typeof step === "number" ? step : null;
}

/** Shows what needs a hand, and lays it over the sheets. */
function begin() {
  const form = formOf();
  if (form === null) {
    return;
  }
  for (const part of form.querySelectorAll("[data-by-hand]")) {
    part.removeAttribute("hidden");
  }
  for (const go of form.querySelectorAll("[data-sketch-go]")) {
    go.setAttribute("hidden", "");
  }
  for (const sheet of form.querySelectorAll("[data-sheet]")) {
    if (sheet instanceof HTMLElement) {
      handOver(sheet, {
        corners: () => cornersOf(form),
        tap: () => chosen(form, "tap"),
        snap: () => Number(chosen(form, "snap")) || 10,
        most: Number(form.dataset["most"]) || 40,
        free: () => waiting && ask(location.href, true, false),
        moved: (corners) => ask(addressOf(form, corners), false, false),
        drawn: (corners) => {
          write(form, corners);
          ask(addressOf(form, corners), true, true);
        },
      });
    }
  }
  const undo = document.querySelector("[data-sketch-undo]");
  undo?.removeAttribute("hidden");
  undo?.toggleAttribute("disabled", (stepOf() ?? 0) === 0);
}

/** A page put by may show an older sketch than its address says. */
function followAddress() {
  const form = formOf();
  const said = new URL(location.href).searchParams.get("corners");
  if (form !== null && said !== null && document.documentElement.dataset["asOf"] !== undefined && said !== text(cornersOf(form))) {
    write(form, said.split("~").filter((c) => c !== "").map((c) => c.split("_")));
    for (const sheet of form.querySelectorAll("[data-sheet]")) {
      sheet.dispatchEvent(new CustomEvent("sketch:draw"));
    }
    ask(location.href, true, false);
  }
}

/** How the hand works is no step of the sketch. @param {HTMLInputElement} field */
function noteHow(field) {
  const address = new URL(location.href);
  address.searchParams.set(field.name, field.value);
  history.replaceState(history.state, "", address);
}

/** @param {SubmitEvent} event */
function submitted(event) {
  const form = formOf();
  if (form === null || event.target !== form) {
    return;
  }
  event.preventDefault();
  const address = new URL(form.action);
  address.search = new URLSearchParams(/** @type {[string, string][]} */ ([...new FormData(form, event.submitter)])).toString();
  ask(address.href, true, true);
}

/**
 * The whole sketch as an address: as the form sends it, or with other corners in place of its rows.
 * @param {HTMLFormElement} form
 * @param {string[][]} [corners]
 */
function addressOf(form, corners) {
  const address = new URL(form.action);
  new FormData(form).forEach((value, name) => {
    if (typeof value === "string" && (corners === undefined || !/^[xyrsw]\d+$/.test(name))) {
      address.searchParams.set(name, value);
    }
  });
  if (corners !== undefined) {
    address.searchParams.set("corners", text(corners));
  }
  return address.href;
}

/** @param {string[][]} corners */
function text(corners) {
  return corners.map((c) => c.filter((figure) => figure !== "").join("_")).join("~");
}

/** @param {HTMLFormElement} form @param {string} name */
function chosen(form, name) {
  const field = form.querySelector(`input[name="${name}"]:checked`);
  return field instanceof HTMLInputElement ? field.value : "";
}

/** The corners as typed: right, up, radius. @param {HTMLFormElement} form @returns {string[][]} */
function cornersOf(form) {
  const corners = [];
  for (let i = 1; ; i++) {
    const [x, y, r] = ["x", "y", "r"].map((letter) => form.elements.namedItem(`${letter}${i}`));
    if (!(x instanceof HTMLInputElement) || !(y instanceof HTMLInputElement)) {
      return corners;
    }
    if (x.value.trim() !== "" && y.value.trim() !== "") {
      corners.push([x.value.trim(), y.value.trim(), r instanceof HTMLInputElement ? r.value.trim() : ""].map((f) => f.replace(",", ".").replace("\u2212", "-")));
    }
  }
}

/**
 * Into the rows there are; more make rows when the server answers, and until then stand in the address.
 * @param {HTMLFormElement} form
 * @param {string[][]} corners
 */
function write(form, corners) {
  for (let i = 1; form.elements.namedItem(`x${i}`) !== null || i <= corners.length; i++) {
    ["x", "y", "r"].forEach((letter, k) => {
      const field = form.elements.namedItem(`${letter}${i}`) ?? form.appendChild(Object.assign(document.createElement("input"), { type: "hidden", name: `${letter}${i}` }));
      if (field instanceof HTMLInputElement) {
        field.value = corners[i - 1]?.[k] ?? "";
      }
    });
    // What the sides were is of the old shape.
    const [side, was] = [form.elements.namedItem(`s${i}`), form.elements.namedItem(`w${i}`)];
    if (side instanceof HTMLInputElement && was instanceof HTMLInputElement) {
      side.value = was.value;
    }
  }
}

/**
 * @param {string} address
 * @param {boolean} whole the sheet and the list too, not the answer alone
 * @param {boolean} remember whether it becomes a step that Undo takes back
 */
function ask(address, whole, remember) {
  next = { address, whole: whole || (next?.whole ?? false), remember: remember || (next?.remember ?? false) };
  if (!busy) {
    void answer();
  }
}

async function answer() {
  busy = true;
  while (next !== null) {
    const asked = next;
    next = null;
    const given = await fetched(asked.address);
    if (asked.remember) {
      step(given?.address ?? asked.address);
    }
    say(given !== null);
    if (given !== null && next === null) {
      put(given.html, asked.whole);
    }
  }
  busy = false;
}

/** @param {string} address */
function step(address) {
  if (address !== location.href) {
    history.pushState({ sketchStep: (stepOf() ?? 0) + 1 }, "", address);
    document.querySelector("[data-sketch-undo]")?.removeAttribute("disabled");
  }
}

/** @param {string} address @returns {Promise<{ html: string, address: string } | null>} */
async function fetched(address) {
  try {
    const given = await fetch(address, { headers: { [fragmentHeader]: "sketch" } });
    const html = await given.text();
    // A figure that cannot be read (422) is still a fragment; anything else is not from this page.
    return html.startsWith("<!DOCTYPE") || (!given.ok && given.status !== 422) ? null : { html, address: given.ok ? given.url : address };
  } catch {
    return null;
  }
}

/** An answer of an older shape is not kept. @param {boolean} there */
function say(there) {
  document.querySelector("[data-sketch-away]")?.toggleAttribute("hidden", there);
  document.getElementById("sketch-keep")?.toggleAttribute("inert", !there);
}

/** @param {string} html @param {boolean} whole */
function put(html, whole) {
  const given = document.createElement("template");
  given.innerHTML = html;
  replace(answerPart, given);
  waiting = whole && document.querySelector(".sketch-hand[data-held]") !== null;
  if (!whole || waiting) {
    replace(saysPart, given);
    return;
  }
  const at = document.activeElement;
  const typed = at instanceof HTMLInputElement && at.type !== "radio" && at.value !== at.defaultValue ? at.value : null;
  const open = document.querySelector(".sketch-list")?.hasAttribute("open") ?? false;
  replace(boardPart, given);
  document.querySelector(".sketch-list")?.toggleAttribute("open", open);
  begin();
  // Keys of a keypad go with the sheet; their field has its own name as its id.
  const pad = at?.closest(".keypad");
  const again = document.getElementById((pad instanceof HTMLElement ? pad.dataset["for"] : at?.id) || "-");
  if (again instanceof HTMLInputElement) {
    if (typed !== null && at instanceof HTMLInputElement && again.defaultValue === at.defaultValue) {
      again.value = typed;
    }
    again.focus({ preventScroll: true });
  }
}

/** @param {string} id @param {HTMLTemplateElement} given */
function replace(id, given) {
  const fresh = given.content.getElementById(id);
  if (fresh !== null) {
    document.getElementById(id)?.replaceWith(fresh);
  }
}
