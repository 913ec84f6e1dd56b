// Nothing that was typed is lost in a sacristy with thick walls. A form that cannot be sent stays as
// it is, says so, is kept on the device and is sent once the server can be reached again; each
// sending has a key, by which the server carries it out once. Forms with secrets, and those of
// accounts, are left to the browser. Without this script forms are sent as ever.
import { say } from "./words.js";

const NAME = "vestiary.unsent";
const NEVER = /^\/(account|users|sign-in|sign-out|welcome|mail|devices|clusters|setup|erasure)/;
const KEPT_DAYS = 7;
const FIRST_PAUSE = 3000;
const LONGEST_PAUSE = 60000;
const PATIENCE = 20000;
const AWAY = [502, 503, 504];
const SIGN = "http://www.w3.org/2000/svg";

const who = document.body.dataset.who;
// What one person typed on a device that a sacristy shares is gone with its window.
const isShared = "shared" in document.body.dataset;
const store = isShared ? sessionStorage : localStorage;
const main = () => document.getElementById("main");
const token = () => document.querySelector("input[name=form-token]")?.value ?? "";
const busy = new Set();
const onTheWay = new Set();
let pause = FIRST_PAUSE;
let due = 0;

function everything() {
  try {
    return JSON.parse(store.getItem(NAME) ?? "[]");
  } catch {
    return [];
  }
}

function mine() {
  const oldest = Date.now() - KEPT_DAYS * 86400000;
  return everything().filter((item) => item.who === who && item.at > oldest);
}

function save(items) {
  try {
    if (items.length === 0) {
      store.removeItem(NAME);
    } else {
      store.setItem(NAME, JSON.stringify(items));
    }
  } catch {
    // A full or forbidden store: the form itself still stands as it was typed.
  }
}

const keep = (item) => save([...everything().filter((other) => other.key !== item.key), item]);
const forget = (item) => save(everything().filter((other) => other.key !== item.key));

function freshKey() {
  return [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

const path = (address) => new URL(address, location.href).pathname;

function isOurs(form, presser) {
  const method = (presser?.getAttribute("formmethod") ?? form.method).toLowerCase();
  return who !== ""
    && method === "post"
    && form.enctype === "application/x-www-form-urlencoded"
    && new URL(form.action).origin === location.origin
    && !NEVER.test(path(form.action))
    && form.querySelector("input[type=password], input[type=file]") === null;
}

function typed(form, presser) {
  return {
    key: freshKey(),
    who,
    at: Date.now(),
    action: path(presser?.getAttribute("formaction") ?? form.action),
    page: location.pathname + location.search,
    fields: [...new FormData(form, presser)].filter(([name]) => name !== "form-token"),
  };
}

// Null where the server cannot be reached.
async function post(item) {
  try {
    const answer = await fetch(item.action, {
      method: "POST",
      body: new URLSearchParams([...item.fields, ["form-token", token()]]),
      headers: { Accept: "text/html", "Idempotency-Key": item.key },
      signal: AbortSignal.timeout(PATIENCE),
    });
    return AWAY.includes(answer.status) ? null : answer;
  } catch {
    return null;
  }
}

// It has this very form, and is not done with it.
const isAtWork = (answer) => answer?.status === 409 && answer.headers.has("Retry-After");

async function show(answer) {
  if (answer.ok && answer.redirected) {
    if (answer.url === location.href) {
      location.reload();
    } else {
      location.assign(answer.url);
    }
    return;
  }
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const fresh = page.getElementById("main");
  if (fresh === null) {
    location.reload();
    return;
  }
  document.title = page.title;
  document.body.className = page.body.className;
  main().replaceChildren(...fresh.childNodes);
  window.htmx?.process(main());
  document.dispatchEvent(new Event("vestiary:newer"));
  window.scrollTo(0, 0);
  main().focus();
}

function sign() {
  const mark = document.createElementNS(SIGN, "svg");
  mark.setAttribute("class", "mark");
  mark.setAttribute("viewBox", "0 0 16 16");
  mark.setAttribute("aria-hidden", "true");
  const use = document.createElementNS(SIGN, "use");
  use.setAttribute("href", "#mark-must");
  mark.append(use);
  return mark;
}

// One sentence at a time, at the head of the form, or of the page where the form is not on it.
function tell(form, words, ...presses) {
  document.getElementById("unsent")?.remove();
  const note = document.createElement("div");
  note.id = "unsent";
  note.className = "unsent unprinted";
  note.setAttribute("role", "alert");
  const sentence = document.createElement("p");
  sentence.append(sign(), " ", words);
  note.append(sentence, ...presses);
  (form ?? main()).prepend(note);
}

function press(words, deed) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "press";
  button.textContent = words;
  button.addEventListener("click", deed);
  return button;
}

function way(words, address) {
  const link = document.createElement("a");
  link.href = address;
  link.textContent = words;
  return link;
}

const clock = (at) => new Date(at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
const formOf = (item) => location.pathname + location.search === item.page
  ? [...document.forms].find((form) => isOurs(form) && path(form.action) === item.action) ?? null
  : null;

function tellAtWork(item) {
  tell(
    formOf(item),
    say("The server has it and is still at work on it. The answer comes by itself."),
    press(say("Ask now"), () => again()),
  );
}

function tellUnsent(item) {
  tell(
    formOf(item),
    isShared
      ? say("Not sent yet: no connection. It is kept until this window is closed and is sent when the connection is back.")
      : say("Not sent yet: no connection. It is kept on this phone and is sent when the connection is back."),
    press(say("Try now"), () => again()),
    press(say("Do not send it"), () => {
      forget(item);
      document.getElementById("unsent")?.remove();
    }),
  );
}

function fill(form, fields) {
  const values = new Map();
  for (const [name, value] of fields) {
    values.set(name, [...(values.get(name) ?? []), value]);
  }
  for (const field of form.elements) {
    if (field.name === "" || field.type === "hidden") {
      continue;
    }
    const given = values.get(field.name) ?? [];
    if (field.type === "checkbox" || field.type === "radio") {
      field.checked = given.includes(field.value);
    } else if (field.type !== "submit" && given.length > 0) {
      field.value = given.shift();
    }
  }
}

function wait(item, answer) {
  if (isAtWork(answer)) {
    tellAtWork(item);
  } else {
    tellUnsent(item);
  }
  later();
}

function later() {
  clearTimeout(due);
  due = setTimeout(again, pause);
  pause = Math.min(2 * pause, LONGEST_PAUSE);
}

async function resend(item) {
  if (busy.has(item.key)) {
    return;
  }
  busy.add(item.key);
  const answer = await post(item);
  busy.delete(item.key);
  const form = formOf(item);
  if (answer === null || isAtWork(answer)) {
    wait(item, answer);
    return;
  }
  pause = FIRST_PAUSE;
  if (answer.ok || form !== null) {
    forget(item);
  } else {
    keep({ ...item, refused: true });
  }
  if (form !== null) {
    await show(answer);
  } else if (answer.ok) {
    tell(null, say("Sent now: what you typed at {0}.", clock(item.at)), way(say("Show it"), answer.url));
  } else {
    tellRefused(item);
  }
}

function tellRefused(item) {
  tell(
    null,
    say("What you typed at {0} was not taken.", clock(item.at)),
    way(say("Look at it"), item.page),
    press(say("Forget it"), () => {
      forget(item);
      document.getElementById("unsent")?.remove();
    }),
  );
}

// One after the other, in the order in which they were typed.
async function again() {
  if (token() === "") {
    return;
  }
  for (const item of mine().filter((one) => !one.refused)) {
    await resend(item);
  }
}

document.addEventListener("submit", async (event) => {
  const form = event.target;
  if (path(form.action) === "/sign-out") {
    save(everything().filter((item) => item.who !== who));
  }
  if (event.defaultPrevented || !isOurs(form, event.submitter)) {
    return;
  }
  event.preventDefault();
  if (busy.has(form)) {
    return;
  }
  busy.add(form);
  const item = typed(form, event.submitter);
  // What was waiting from this form is sent as it is now, or not at all.
  mine().filter((other) => formOf(other) === form).forEach(forget);
  onTheWay.add(item);
  const answer = await post(item);
  onTheWay.delete(item);
  busy.delete(form);
  if (answer === null || isAtWork(answer)) {
    keep(item);
    wait(item, answer);
  } else {
    await show(answer);
  }
});

// Whoever turns to another page before the answer is there hears of it on that one.
window.addEventListener("pagehide", () => onTheWay.forEach(keep));

// What was typed before the page was read anew stands in its form again.
function offer() {
  for (const item of mine()) {
    const form = formOf(item);
    if (form !== null) {
      fill(form, item.fields);
    }
    if (item.refused && form === null) {
      tellRefused(item);
    } else if (item.refused) {
      tell(form, say("This is what you typed at {0}; it was not taken. Put it right and send it again.", clock(item.at)));
    }
  }
}

if (who !== "") {
  offer();
  again();
  window.addEventListener("online", () => {
    pause = FIRST_PAUSE;
    again();
  });
  document.addEventListener("visibilitychange", () => {
    if (!document.hidden) {
      again();
    }
  });
}
