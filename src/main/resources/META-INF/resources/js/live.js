// Keeps an open page up to date: when the server says that something has changed, the page is read
// again, and if it reads otherwise now, it is put in place. Whoever is in the middle of something
// (a form, an open detail, a chosen link) is asked first. A page that nobody looks at listens to
// nothing, since a browser grants a server few connections.
const main = () => document.getElementById("main");
const note = document.getElementById("newer");
const together = 400;
// A page is whole long before: whatever waits until nothing is fetched any more (a printer of
// pages, a test) must not wait for a bell that never ends.
const settled = 5000;
const opened = () => main().querySelectorAll("details[open]").length;
let seen = main().innerHTML;
let openAnyway = opened();
let bell = null;
let due = 0;

const fields = ":is(input:not([type=hidden]), select, textarea)";
const isForm = () => main().querySelector(`form[method=post] ${fields}`);

const isChosen = (box) => box.checked !== box.defaultChecked;
const isBusy = () =>
  main().contains(document.activeElement) && document.activeElement !== main()
  || opened() !== openAnyway
  || [...main().querySelectorAll("input[type=checkbox], input[type=radio]")].some(isChosen);

async function read() {
  const answer = await fetch(location.href, { headers: { Accept: "text/html" } });
  if (!answer.ok) {
    return null;
  }
  return new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("main");
}

async function look() {
  const fresh = await read().catch(() => null);
  if (fresh === null || fresh.innerHTML === seen) {
    return;
  }
  if (isBusy()) {
    note.hidden = false;
    return;
  }
  seen = fresh.innerHTML;
  main().replaceChildren(...fresh.childNodes);
  openAnyway = opened();
  htmx.process(main());
  note.hidden = true;
  document.dispatchEvent(new Event("vestiary:newer"));
}

function soon(rung) {
  // What changes until then is seen with it.
  if (due !== 0) {
    return;
  }
  // Many pages hear one bell: they ask one after the other, over as long as the server says.
  const spread = Number(rung.data) || together;
  due = setTimeout(() => {
    due = 0;
    look();
  }, together + Math.random() * spread);
}

function listen() {
  if (document.hidden) {
    bell?.close();
    bell = null;
  } else if (bell === null) {
    bell = new EventSource(`/live?age=${Math.round(performance.now())}`);
    bell.addEventListener("change", soon);
    bell.addEventListener("error", () => bell?.addEventListener("open", soon, { once: true }));
  }
}

if (!isForm()) {
  note.querySelector("a").addEventListener("click", (press) => {
    press.preventDefault();
    location.reload();
  });
  document.addEventListener("visibilitychange", listen);
  setTimeout(listen, settled);
}
