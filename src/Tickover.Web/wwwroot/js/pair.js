// @ts-check
/** The QR code of the machine carries the pairing code behind the number sign: puts it into its field and out of the address. */
export function fillCode() {
  const field = document.querySelector("form[action='/pair'] input[name=code]");
  if (field instanceof HTMLInputElement && location.hash.length > 1) {
    field.value = location.hash.slice(1);
    history.replaceState(null, "", location.pathname);
  }
}
