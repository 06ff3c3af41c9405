/** The record sheet: a button that prints it, where there is script to press it with. */
(function () {
  "use strict";

  const button = /** @type {HTMLButtonElement} */ (document.getElementById("_record-print"));
  button.hidden = false;
  button.addEventListener("click", () => window.print());
}());
