// Reveals the print buttons, which without a script could do nothing.
function reveal() {
  for (const button of document.querySelectorAll("[data-print]")) {
    button.hidden = false;
  }
}

document.addEventListener("click", (press) => {
  if (press.target.closest("[data-print]")) {
    window.print();
  }
});
document.addEventListener("vestiary:newer", reveal);
reveal();
