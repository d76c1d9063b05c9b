// @ts-check
/** A drawing follows the sliders of a form while they are dragged. Without this the form's button moves it. */

const fragmentHeader = "X-Tickover-Fragment";

/** One drawing is fetched at a time; of the places passed meanwhile only the last counts. */
let busy = false;
let again = false;

/** Lets every form marked data-follow move its drawing. */
export function followSliders() {
  for (const form of document.querySelectorAll("form[data-follow]")) {
    if (form instanceof HTMLFormElement) {
      form.querySelector("[data-follow-go]")?.setAttribute("hidden", "");
      form.addEventListener("input", (event) => {
        say(event.target);
        void draw(form);
      });
      form.addEventListener("change", () => history.replaceState(null, "", addressOf(form)));
    }
  }
}

/** @param {EventTarget | null} slider */
function say(slider) {
  const words = slider instanceof HTMLInputElement ? slider.form?.querySelector(`output[for="${slider.id}"]`) : null;
  if (words && slider instanceof HTMLInputElement) {
    words.textContent = `${slider.value}\u202f${slider.getAttribute("data-unit") ?? ""}`;
  }
}

/** @param {HTMLFormElement} form */
async function draw(form) {
  if (busy) {
    again = true;
    return;
  }
  busy = true;
  do {
    again = false;
    const html = await fetched(addressOf(form));
    const place = document.getElementById(form.getAttribute("data-follow") ?? "");
    if (place && html !== null) {
      place.innerHTML = html;
    }
    document.querySelector("[data-follow-away]")?.toggleAttribute("hidden", html !== null);
  } while (again);
  busy = false;
}

/** @param {string} address @returns {Promise<string | null>} */
async function fetched(address) {
  try {
    const answer = await fetch(address, { headers: { [fragmentHeader]: "drawing" } });
    return answer.ok ? await answer.text() : null;
  } catch {
    return null;
  }
}

/** @param {HTMLFormElement} form */
function addressOf(form) {
  const address = new URL(form.action);
  for (const field of form.elements) {
    if (field instanceof HTMLInputElement && field.name) {
      address.searchParams.set(field.name, field.value);
    }
  }
  return address.href;
}
