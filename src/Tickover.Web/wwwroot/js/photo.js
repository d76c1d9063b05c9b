// @ts-check
/**
 * Photographs of fields marked data-photo: made smaller before they are kept, turned upright, without what the camera noted about
 * place and time; and marked up with arrows (marks.js). What cannot be read here goes to the server as it is.
 */
import { markUp, unmark } from "./marks.js";

const longestEdge = 2400;
const quality = 0.85;
const biggestBytes = 60 * 1024 * 1024;

/** @type {WeakMap<HTMLFormElement, Promise<void>>} */
const atWork = new WeakMap();

/**
 * @param {HTMLFormElement} form
 * @returns {Promise<void>} done when no photograph of the form is being made smaller
 */
export function settled(form) {
  return atWork.get(form) ?? Promise.resolve();
}

/** Follows the fields for photographs, now and after a swap. */
export function takePhotographs() {
  document.addEventListener("change", (event) => {
    const field = event.target;
    if (field instanceof HTMLInputElement && field.type === "file" && field.dataset["photo"] !== undefined && field.form) {
      const work = prepare(field);
      atWork.set(field.form, work);
    }
  });
  document.addEventListener("reset", (event) => {
    if (event.target instanceof HTMLFormElement) {
      for (const field of event.target.querySelectorAll("input[data-photo]")) {
        unmark(field);
        say(field, "");
      }
    }
  });
}

/** @param {HTMLInputElement} field */
async function prepare(field) {
  unmark(field);
  say(field, "");
  const file = field.files?.[0];
  if (!file) {
    return;
  }
  try {
    const picture = await draw(file);
    const small = await jpegOf(picture);
    if (field.files?.[0] !== file) {
      return;
    }
    const box = new DataTransfer();
    box.items.add(new File([small], file.name.replace(/\.[^.]*$/, "") + ".jpg", { type: "image/jpeg" }));
    field.files = box.files;
    markUp(field, picture);
  } catch {
    tooBig(field, file);
  }
}

/** @param {HTMLInputElement} field @param {File} file */
function tooBig(field, file) {
  if (file.size > biggestBytes) {
    field.value = "";
    say(field, `${file.name} is ${Math.round(file.size / 1024 / 1024)} MB; at most 60 MB can be kept. Take it again at a lower setting, or choose another.`);
  } else {
    say(field, "This browser cannot show this picture. It is kept as it is.");
  }
}

/**
 * @param {File} file
 * @returns {Promise<HTMLCanvasElement>} the picture upright, its longer edge 2400 px at most
 */
async function draw(file) {
  const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, longestEdge / Math.max(bitmap.width, bitmap.height));
  const canvas = Object.assign(document.createElement("canvas"), { width: Math.round(bitmap.width * scale), height: Math.round(bitmap.height * scale) });
  const context = canvas.getContext("2d");
  if (!context) {
    throw new Error("There is no canvas to draw on.");
  }
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return canvas;
}

/** @param {HTMLCanvasElement} canvas @returns {Promise<Blob>} */
function jpegOf(canvas) {
  return new Promise((resolve, reject) => canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("The picture cannot be written."))), "image/jpeg", quality));
}

/** @param {Element} field @param {string} words */
function say(field, words) {
  let place = field.parentElement?.querySelector(":scope > .photo-said");
  if (!place && words !== "") {
    place = Object.assign(document.createElement("p"), { className: "photo-said" });
    place.setAttribute("role", "status");
    field.after(place);
  }
  if (place) {
    place.textContent = words;
  }
}
