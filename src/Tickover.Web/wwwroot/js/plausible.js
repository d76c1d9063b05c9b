// @ts-check
/**
 * Asks once about a figure far from what is usual, beside the figure: data-plausible="2 6". A second Keep of the same figure keeps it.
 */

/** @param {string} text @returns {number | null} the figure in what was typed, with a comma or a point, its unit left off */
export function figureIn(text) {
  const match = /^\s*([-+\u2212]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)(?![\d.,])/.exec(text);
  if (match === null) {
    return null;
  }
  const size = Number((match[2] ?? "").replace(",", "."));
  return match[1] === "-" || match[1] === "\u2212" ? -size : size;
}

/** @param {number} figure */
export function shown(figure) {
  return String(figure).replace("-", "\u2212");
}

/** Watches the forms on this page. The question comes before the outbox sees the entry. */
export function askAboutFigures() {
  document.addEventListener("submit", (event) => {
    const form = event.target;
    const odd = form instanceof HTMLFormElement ? oddIn(form) : null;
    if (odd !== null) {
      event.preventDefault();
      event.stopImmediatePropagation();
      ask(odd);
    } else if (form instanceof HTMLFormElement) {
      saySure(form);
    }
  }, { capture: true });
  document.addEventListener("input", (event) => {
    if (event.target instanceof HTMLInputElement && event.target.dataset["plausible"] !== undefined) {
      withdraw(event.target);
    }
  });
  document.addEventListener("reset", (event) => {
    if (event.target instanceof HTMLFormElement) {
      event.target.querySelectorAll("input[data-plausible]").forEach((f) => f instanceof HTMLInputElement && withdraw(f));
    }
  });
}

/**
 * @param {HTMLFormElement} form
 * @returns {HTMLInputElement | null} the first figure outside its usual range that nobody has confirmed
 */
function oddIn(form) {
  for (const field of form.querySelectorAll("input[data-plausible]")) {
    if (field instanceof HTMLInputElement && field.dataset["asked"] !== field.value && isOdd(field)) {
      return field;
    }
  }
  return null;
}

/** The server asks as well; it need not where a person has answered here. @param {HTMLFormElement} form */
function saySure(form) {
  const sure = form.elements.namedItem("sure");
  if (sure instanceof HTMLInputElement && form.querySelector("input[data-asked]")) {
    sure.checked = true;
  }
}

/** @param {HTMLInputElement} field */
function isOdd(field) {
  const figure = figureIn(field.value);
  const [least, most] = rangeOf(field);
  // In another unit than the range is given in, nothing can be said here.
  const inUnit = (field.dataset["chosenUnit"] ?? field.dataset["unit"] ?? "") === (field.dataset["unit"] ?? "") && !/[a-z%°]/i.test(field.value);
  return figure !== null && inUnit && least !== undefined && most !== undefined && (figure < least || figure > most);
}

/** @param {HTMLInputElement} field */
function rangeOf(field) {
  return (field.dataset["plausible"] ?? "").trim().split(/\s+/).map(Number);
}

/** @param {HTMLInputElement} field */
function ask(field) {
  const figure = shown(figureIn(field.value) ?? 0);
  const unit = field.dataset["unit"] ?? "";
  const [least, most] = rangeOf(field);
  withdraw(field);
  field.dataset["asked"] = field.value;
  const box = Object.assign(document.createElement("div"), { className: "ask", id: `${field.id || field.name}-ask` });
  box.setAttribute("role", "alert");
  const words = document.createElement("p");
  words.textContent = `${figure}${unit === "" ? "" : ` ${unit}`}? Usually ${shown(least ?? 0)} to ${shown(most ?? 0)}. Keep ${figure} or mend it.`;
  const keep = Object.assign(document.createElement("button"), { type: "submit", className: "btn", textContent: `Keep ${figure}` });
  const mend = Object.assign(document.createElement("button"), { type: "button", className: "btn", textContent: "Mend it" });
  mend.addEventListener("click", () => {
    withdraw(field);
    field.focus();
    field.select();
  });
  box.append(words, keep, mend);
  (field.closest(".entry, .with-unit") ?? field).after(box);
  field.focus();
}

/** @param {HTMLInputElement} field */
function withdraw(field) {
  delete field.dataset["asked"];
  document.getElementById(`${field.id || field.name}-ask`)?.remove();
}
