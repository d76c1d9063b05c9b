// @ts-check
/** @type {WeakMap<HTMLFormElement, Promise<void>>} */
const atWork = new WeakMap();

/**
 * @param {HTMLFormElement} form
 * @returns {Promise<void>} done when no photograph of the form is being made smaller
 */
export function settled(form) {
  return atWork.get(form) ?? Promise.resolve();
}
