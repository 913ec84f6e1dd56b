// Copies what is shown only once; a phone hardly lets three lines of letters be marked by hand.
// Browsers offer it to pages that came by https, or from the machine itself.
import { say } from "./words.js";

if (navigator.clipboard !== undefined) {
  for (const button of document.querySelectorAll("[data-copy]")) {
    button.hidden = false;
    button.addEventListener("click", async () => {
      await navigator.clipboard.writeText(button.dataset.copy);
      button.textContent = say("Copied");
    });
  }
}
