// @ts-check
/** A button with data-print prints the page as it stands; without scripts the browser's own menu does. */
export function followPrints() {
  document.addEventListener("click", (event) => {
    if (event.target instanceof Element && event.target.closest("[data-print]")) {
      window.print();
    }
  });
}
