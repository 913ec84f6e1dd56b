// What scripts say, in the language of the page: the English is the key of the Spanish.
const spanish = {
  "Not sent yet: no connection. It is kept on this phone and is sent when the connection is back.":
    "Todavía sin enviar: no hay conexión. Se guarda en este teléfono y se envía cuando vuelva la conexión.",
  "Not sent yet: no connection. It is kept until this window is closed and is sent when the connection is back.":
    "Todavía sin enviar: no hay conexión. Se guarda hasta que se cierre esta ventana y se envía cuando vuelva la conexión.",
  "The server has it and is still at work on it. The answer comes by itself.":
    "El servidor lo tiene y todavía trabaja en ello. La respuesta llega sola.",
  "Copied": "Copiado",
  "Ask now": "Preguntar ahora",
  "Try now": "Probar ahora",
  "Do not send it": "No enviarlo",
  "Sent now: what you typed at {0}.": "Enviado ahora: lo que escribió a las {0}.",
  "Show it": "Mostrarlo",
  "What you typed at {0} was not taken.": "Lo que escribió a las {0} no se aceptó.",
  "Look at it": "Mirarlo",
  "Forget it": "Olvidarlo",
  "This is what you typed at {0}; it was not taken. Put it right and send it again.":
    "Esto es lo que escribió a las {0}; no se aceptó. Corríjalo y envíelo otra vez.",
  "This did not work. Try again, or sign in with name and password.":
    "No ha funcionado. Inténtelo otra vez, o entre con nombre y contraseña.",
};

export function say(english, value = "") {
  const said = document.documentElement.lang === "es" ? spanish[english] ?? english : english;
  return said.replace("{0}", value);
}
