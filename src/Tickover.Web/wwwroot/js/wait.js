// @ts-check
/** Looks again while the server is at work: a part of the page marked data-wait says so. Without this script a link does it. */
import { refresh } from "./refresh.js";

const everyMs = 1500;

/** Follows the parts that wait on this page. */
export function followWaits() {
  if (document.querySelector("[data-wait]") !== null) {
    setTimeout(() => void refresh().then(followWaits), everyMs);
  }
}
