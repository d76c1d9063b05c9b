// @ts-check
/** What the page of rounds shows of an entry before the server has it: on the drawing, on the field, beside the figure. */

/** @param {HTMLFormElement} form @param {string} name @returns {HTMLInputElement} */
export function field(form, name) {
  return /** @type {HTMLInputElement} */ (form.querySelector(`input[name="${name}"]`));
}

/**
 * The drawing shows what was entered here as the server's page would, but open: it is not there yet.
 * @param {Iterable<import("./round.js").Entered>} entered
 * @param {number | null} barrel the barrel that is next
 */
export function marks(entered, barrel) {
  const figures = new Map([...entered].filter((e) => e.kind === "reading").map((e) => [e.barrel, e.value]));
  for (const part of document.querySelectorAll('[data-part^="barrel:"]')) {
    const number = Number(part.getAttribute("data-part")?.slice(7));
    const figure = figures.get(number);
    part.classList.toggle("now", number === barrel);
    part.classList.toggle("kept-here", figure !== undefined);
    const [, shown, label] = part.querySelectorAll("text");
    if (figure !== undefined && shown) {
      shown.textContent = figure === "none" ? "none" : figure;
      if (label) {
        label.textContent = "kept";
      }
    }
  }
}

/**
 * Puts unit and usual range of a measure on the field.
 * @param {HTMLFormElement} form
 * @param {string} key
 */
export function measure(form, key) {
  const known = key === "" ? null : document.querySelector(`#pad .speeds a[data-measure="${CSS.escape(key)}"]`);
  if (known instanceof HTMLElement) {
    field(form, "measure").value = key;
    const value = field(form, "value");
    value.dataset["unit"] = known.dataset["unit"] ?? "";
    value.dataset["plausible"] = known.dataset["plausible"] ?? "";
    for (const link of document.querySelectorAll("#pad .speeds a")) {
      if (link === known) {
        link.setAttribute("aria-current", "true");
      } else {
        link.removeAttribute("aria-current");
      }
    }
    const unit = form.querySelector(".reads .unit");
    if (unit !== null) {
      unit.textContent = known.dataset["unit"] ?? "";
    }
  }
}

/**
 * How a figure stands to the mean of the barrels.
 * @param {number} figure
 * @returns {{ words: string, ok: boolean } | null} null where there is no mean
 */
export function ofMean(figure) {
  const plan = document.getElementById("balance-plan")?.dataset ?? {};
  const [mean, limit] = [Number(plan["mean"] || NaN), Number(plan["limit"] || NaN)];
  if (!(mean > 0) || !(limit > 0)) {
    return null;
  }
  const off = figure - mean;
  const percent = `${off < 0 ? "\u2212" : "+"}${Math.abs(Math.round((100 * off) / mean))} % of mean`;
  return Math.abs(off) <= limit ? { words: `${percent}, within limit`, ok: true } : { words: `${percent}, ${off < 0 ? "low" : "high"}`, ok: false };
}
