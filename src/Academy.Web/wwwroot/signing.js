// What saving will do is asked again whenever the form changes, and takes the place of what stood there. Without this script the
// button "Show what it will do" does the same by a round trip.
const form = document.querySelector("form[data-preview]");
const parts = ["result", "will"];
let asked;
let waits;

function ask() {
  asked?.abort();
  const request = new XMLHttpRequest();
  asked = request;
  request.open("POST", new URL(form.dataset.preview, document.baseURI));
  request.responseType = "document";
  request.addEventListener("load", () => {
    if (request.status === 200 && request.response) show(request.response);
  });
  request.send(new FormData(form));
}

// A document that the browser read itself needs no trusted HTML, and nothing in it runs.
function show(answer) {
  for (const id of parts) {
    const fresh = answer.getElementById(id);
    const there = document.getElementById(id);
    if (!fresh || !there || fresh.textContent === there.textContent) continue;
    there.replaceChildren(...[...fresh.childNodes].map((node) => document.importNode(node, true)));
  }
}

function askSoon(wait) {
  clearTimeout(waits);
  waits = setTimeout(ask, wait);
}

function meetAll(click) {
  click.preventDefault();
  for (const met of form.querySelectorAll('.criteria input[value="Met"]')) met.checked = true;
  askSoon(0);
}

function openPhrases() {
  const phrases = form.querySelector("[data-when-not-yet]");
  if (phrases && form.querySelector('.criteria input[value="NotYet"]:checked')) phrases.open = true;
}

if (form) {
  form.addEventListener("change", () => {
    openPhrases();
    askSoon(0);
  });
  form.addEventListener("input", () => askSoon(400));
  form.querySelector("[data-all-met]")?.addEventListener("click", meetAll);
  for (const show of form.querySelectorAll("[data-show]")) show.hidden = true;
}
