// @ts-check
/** A part tapped on the drawing of the description opens its group and puts the cursor into its field. */

/** Follows the fragment of the address, now and when it changes. */
export function revealFields() {
  reveal();
  window.addEventListener("hashchange", reveal);
}

function reveal() {
  const field = location.hash.startsWith("#f-") ? document.getElementById(location.hash.slice(1)) : null;
  if (field instanceof HTMLInputElement) {
    field.closest("details")?.setAttribute("open", "");
    field.focus();
    field.scrollIntoView({ block: "center" });
  }
}
