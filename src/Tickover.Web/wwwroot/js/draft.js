// @ts-check
/**
 * Keeps what is typed into a long form until the server has it: a reload, a closed tab or a server away loses nothing.
 */

const prefix = "tickover-draft:";

/** Keeps and restores the drafts of the forms on this page. */
export function keepDrafts() {
  for (const form of document.querySelectorAll("form[data-draft-form]")) {
    if (form instanceof HTMLFormElement) {
      keep(form);
    }
  }
}

/** @param {HTMLFormElement} form */
function keep(form) {
  const key = prefix + location.pathname + location.search.replace(/[?&]done=[^&]*/, "");
  const version = form.querySelector("input[name=version]");
  const made = version instanceof HTMLInputElement ? version.value : "";
  restore(form, key, made);
  form.addEventListener("input", () => {
    /** @type {Record<string, string>} */
    const typed = {};
    for (const field of fields(form)) {
      if (field.value !== field.defaultValue) {
        typed[field.name] = field.value;
      }
    }
    localStorage.setItem(key, JSON.stringify({ made, typed }));
  });
}

/**
 * A draft made from this same document comes back; one from an older document is out of date and goes.
 * @param {HTMLFormElement} form
 * @param {string} key
 * @param {string} made
 */
function restore(form, key, made) {
  const kept = read(key);
  if (kept === null || kept.made !== made) {
    localStorage.removeItem(key);
    return;
  }
  for (const field of fields(form)) {
    const text = kept.typed[field.name];
    if (text !== undefined) {
      field.value = text;
      field.closest("details")?.setAttribute("open", "");
    }
  }
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

/**
 * @param {HTMLFormElement} form
 * @returns {HTMLInputElement[]}
 */
function fields(form) {
  return [...form.querySelectorAll("input[data-draft]")].filter((f) => f instanceof HTMLInputElement);
}
