// Signs in by a key that the device holds, and adds one (W3C Web Authentication 7.1 and 7.2). Where
// the browser knows no keys, or came by another address than the server's own, nothing is offered.
import { say } from "./words.js";

const bytes = (text) =>
  Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (c) => c.charCodeAt(0));
const text = (buffer) =>
  btoa(String.fromCharCode(...new Uint8Array(buffer)))
    .replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
const keys = (ids) => ids.map((id) => ({ type: "public-key", id: bytes(id) }));
const unsure = say("This did not work. Try again, or sign in with name and password.");

async function send(path, body) {
  const answer = await fetch(path, {
    method: "POST",
    headers: {
      Accept: "application/json",
      "Content-Type": "application/json",
      "X-Form-Token": document.querySelector("input[name=form-token]")?.value ?? "",
    },
    body: JSON.stringify(body),
  });
  const said = await answer.json();
  if (!answer.ok) {
    throw new Error(said.detail);
  }
  return said;
}

async function signIn() {
  const asked = await send("/sign-in/passkey/challenge", {});
  const { rawId, response } = await navigator.credentials.get({
    publicKey: {
      challenge: bytes(asked.challenge),
      rpId: asked.site,
      timeout: asked.milliseconds,
      userVerification: "required",
    },
  });
  return send("/sign-in/passkey", {
    credential: text(rawId),
    user: text(response.userHandle ?? new ArrayBuffer(0)),
    clientData: text(response.clientDataJSON),
    authenticatorData: text(response.authenticatorData),
    signature: text(response.signature),
    stays: document.querySelector("input[name=stays]").checked,
    back: document.querySelector("input[name=back]").value,
  });
}

async function add(place) {
  const name = place.querySelector("#passkey-name").value;
  const password = place.querySelector("input[type=password]")?.value ?? "";
  const asked = await send("/account/passkeys/challenge", { password });
  const { response } = await navigator.credentials.create({
    publicKey: {
      challenge: bytes(asked.challenge),
      rp: { id: asked.site, name: "Vestiary" },
      user: { id: bytes(asked.user), name: asked.login, displayName: asked.name },
      pubKeyCredParams: asked.algorithms.map((alg) => ({ type: "public-key", alg })),
      excludeCredentials: keys(asked.known),
      authenticatorSelection: { residentKey: "required", userVerification: "required" },
      attestation: "none",
      timeout: asked.milliseconds,
    },
  });
  return send("/account/passkeys", {
    name,
    clientData: text(response.clientDataJSON),
    attestation: text(response.attestationObject),
  });
}

const deeds = { "sign-in": signIn, add };

for (const place of document.querySelectorAll("[data-passkey]")) {
  if (!window.PublicKeyCredential || location.origin !== place.dataset.origin) {
    continue;
  }
  place.hidden = false;
  const problem = place.querySelector(".error");
  const button = place.querySelector("button");
  button.addEventListener("click", async () => {
    problem.hidden = true;
    button.disabled = true;
    try {
      location.assign((await deeds[place.dataset.passkey](place)).to);
    } catch (failure) {
      // What the browser itself says is in words for programmers.
      problem.textContent = failure instanceof DOMException ? unsure : failure.message;
      problem.hidden = false;
    } finally {
      button.disabled = false;
    }
  });
}
