// @ts-check
/**
 * Keeps what is typed until it is kept for good: a reload, a closed tab, a flat battery or a server away loses nothing.
 * data-draft="NAME" stands on a form, for all its fields, or on the fields themselves.
 */

const prefix = "tickover-draft:";

// A refused form shows what was sent, so its fields count as typed although they are as the page came.
/** @type {WeakSet<HTMLFormElement>} */
const refused = new WeakSet();
const drafted = "form[data-draft], form:has([data-draft])";

/** Keeps and restores the drafts of the forms on this page, now and after a swap. */
export function keepDrafts() {
  restoreAll();
  document.addEventListener("tickover:swapped", restoreAll);
  document.addEventListener("input", note);
  document.addEventListener("change", note);
}

/**
 * What was typed is kept for good.
 * @param {HTMLFormElement} form
 */
export function forgetDraft(form) {
  if (form.matches(drafted)) {
    quietly(() => localStorage.removeItem(keyOf(form)));
  }
}

/** @param {Event} event */
function note(event) {
  const form = event.target instanceof Element ? event.target.closest(drafted) : null;
  if (form instanceof HTMLFormElement) {
    /** @type {Record<string, string>} */
    const typed = {};
    const before = new Set(refused.has(form) ? Object.keys(read(keyOf(form))?.typed ?? {}) : []);
    for (const field of draftedIn(form)) {
      if (isChanged(field) || before.has(nameOf(field))) {
        typed[nameOf(field)] = valueOf(field);
      }
    }
    quietly(() => localStorage.setItem(keyOf(form), JSON.stringify({ made: madeFrom(form), typed })));
  }
}

function restoreAll() {
  for (const form of document.querySelectorAll(drafted)) {
    if (form instanceof HTMLFormElement) {
      restore(form);
    }
  }
}

/**
 * A draft made from this same version comes back; one from an older version is out of date and goes.
 * @param {HTMLFormElement} form
 */
function restore(form) {
  if (draftedIn(form).some((f) => f.getAttribute("aria-invalid") === "true")) {
    follow(form);
    return;
  }
  const kept = read(keyOf(form));
  if (kept === null || kept.made !== madeFrom(form)) {
    forgetDraft(form);
    return;
  }
  for (const field of draftedIn(form)) {
    const text = kept.typed[nameOf(field)];
    if (text !== undefined && text !== valueOf(field)) {
      put(field, text);
      field.closest("details")?.setAttribute("open", "");
    }
  }
}

/**
 * The page shows what was just sent and refused, which is newer than the draft: the draft takes its fields from there.
 * @param {HTMLFormElement} form
 */
function follow(form) {
  refused.add(form);
  const kept = read(keyOf(form));
  const names = new Set(kept?.made === madeFrom(form) ? Object.keys(kept.typed) : []);
  const typed = draftedIn(form).filter((f) => names.has(nameOf(f)) || f.getAttribute("aria-invalid") === "true");
  quietly(() => localStorage.setItem(keyOf(form), JSON.stringify({ made: madeFrom(form), typed: Object.fromEntries(typed.map((f) => [nameOf(f), valueOf(f)])) })));
}

/** @param {HTMLFormElement} form */
function keyOf(form) {
  return `${prefix}${location.pathname}${location.search.replace(/[?&]done=[^&]*/, "")}#${form.dataset["draft"] ?? form.getAttribute("action")}`;
}

/** @param {HTMLFormElement} form */
function draftedIn(form) {
  return form.dataset["draft"] !== undefined ? fields(form) : fields(form).filter((f) => f.dataset["draft"] !== undefined);
}

/** @param {HTMLFormElement} form */
function madeFrom(form) {
  const version = form.querySelector("input[name=version]");
  return version instanceof HTMLInputElement ? version.value : "";
}

/**
 * @param {string} key
 * @returns {{ made: string, typed: Record<string, string> } | null}
 */
function read(key) {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? "null");
    return typeof kept?.made === "string" && typeof kept.typed === "object" && kept.typed !== null ? kept : null;
  } catch {
    return null;
  }
}

/** @param {() => void} work what may fail where the browser keeps nothing, or is full */
function quietly(work) {
  try {
    work();
  } catch {
    // The entry itself is kept elsewhere; only the half-typed text is at stake, and there is no place for it.
  }
}

/**
 * @typedef {HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement} Field
 */

/**
 * @param {HTMLFormElement} form
 * @returns {Field[]}
 */
export function fields(form) {
  const kinds = new Set(["hidden", "file", "password", "submit", "button", "image", "reset"]);
  return /** @type {Field[]} */ ([...form.elements].filter((f) =>
    (f instanceof HTMLInputElement || f instanceof HTMLTextAreaElement || f instanceof HTMLSelectElement) && f.name !== "" && !kinds.has(f.type)));
}

/** @param {Field} field @returns {boolean} whether a person changed it since the page came */
export function isChanged(field) {
  if (field instanceof HTMLSelectElement) {
    const chosen = [...field.options].findIndex((o) => o.defaultSelected);
    return field.selectedIndex !== Math.max(0, chosen);
  }
  return isTicked(field) ? field.checked !== field.defaultChecked : field.value !== field.defaultValue;
}

/** @param {Field} field */
export function valueOf(field) {
  return isTicked(field) ? String(field.checked) : field.value;
}

/**
 * @param {Field} field
 * @param {string} text
 */
export function put(field, text) {
  if (isTicked(field)) {
    field.checked = text === "true";
  } else {
    field.value = text;
  }
}

/** Radio buttons share a name, so the value tells them apart. @param {Field} field */
export function nameOf(field) {
  return isTicked(field) ? `${field.name}=${field.value}` : field.name;
}

/** @param {Field} field @returns {field is HTMLInputElement} */
function isTicked(field) {
  return field instanceof HTMLInputElement && (field.type === "checkbox" || field.type === "radio");
}
