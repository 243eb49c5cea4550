// The page on which a module is written. Everything works without this file; with it, the page shows how the text looks while
// somebody types, leads to the line that a finding is about, and keeps on this device what is not saved yet.
const form = document.querySelector("form.writing");
const area = form.querySelector("#Form_Text");
const version = form.elements["Form.Version"];
const line = document.querySelector("#kept");
const at = document.querySelector("#at");
const key = `writing:${form.dataset.module}`;
const pause = 600;
const twoWeeks = 14 * 24 * 60 * 60 * 1000;

/* ---------- what the page says ---------- */

function say(...parts) {
  line.replaceChildren(...parts.flatMap((part) => [part, " "]));
  line.hidden = parts.length === 0;
}

function button(words, act) {
  const made = Object.assign(document.createElement("button"), { type: "button", className: "act2", textContent: words });
  made.addEventListener("click", act);
  return made;
}

/* ---------- what is not saved yet stays on this device ---------- */

const read = (name) => JSON.parse(localStorage.getItem(name) ?? "null");

function keep(isSent) {
  const kept = { by: form.dataset.by, at: Date.now(), version: version.value, text: area.value, isSent };
  try {
    localStorage.setItem(key, JSON.stringify(kept));
  } catch (reason) {
    console.info("This device keeps nothing:", reason.message);
  }
}

function prune() {
  for (const name of Object.keys(localStorage).filter((one) => one.startsWith("writing:"))) {
    if (Date.now() - read(name).at > twoWeeks) localStorage.removeItem(name);
  }
}

// The text that is saved as it stood when the page came, for whoever does not want what was kept.
function offer(kept) {
  const saved = { text: area.value, version: version.value };
  area.value = kept.text;
  version.value = kept.version;
  const back = button("Take what is saved instead", () => {
    area.value = saved.text;
    version.value = saved.version;
    localStorage.removeItem(key);
    say();
    askSoon(0);
  });
  const isOlder = kept.version !== saved.version;
  say(
    "What you typed on this device and did not save is filled in again.",
    ...(isOlder ? ["Somebody saved this module meanwhile: saving yours shows both."] : []),
    back,
  );
}

function takeUp() {
  const kept = read(key);
  if (!form.dataset.fresh || kept?.by !== form.dataset.by) return;
  const isSaved = kept.text === area.value || (kept.isSent && Number(version.value) > Number(kept.version));
  if (isSaved) localStorage.removeItem(key);
  else offer(kept);
}

/* ---------- how it looks, asked again after a pause ---------- */

let asked;
let waits;

function ask() {
  asked?.abort();
  const request = new XMLHttpRequest();
  asked = request;
  request.open("POST", new URL(form.dataset.preview, form.action));
  request.responseType = "document";
  request.addEventListener("load", () => show(request));
  request.addEventListener("error", () => say("There is no connection. What you type is kept on this device."));
  request.send(new URLSearchParams(new FormData(form)));
}

// A document that the browser read itself needs no trusted HTML, and nothing in it runs.
function show(request) {
  const answer = request.response;
  if (request.status !== 200 || !answer?.getElementById("found")) {
    say("You are signed out, or the portal cannot answer. What you type is kept on this device: sign in again, and it is filled in.");
    return;
  }
  if (line.textContent.startsWith("There is no connection") || line.textContent.startsWith("You are signed out")) say();
  for (const id of ["found", "shown-note", "shown"]) {
    const fresh = answer.getElementById(id);
    // While the text is broken, what it looked like last stays in view.
    if (id === "shown" && fresh.children.length === 0) continue;
    document.getElementById(id).replaceChildren(...[...fresh.childNodes].map((node) => document.importNode(node, true)));
  }
  document.getElementById("shown").classList.toggle("before", answer.getElementById("shown").children.length === 0);
}

function askSoon(wait) {
  clearTimeout(waits);
  waits = setTimeout(ask, wait);
}

/* ---------- lines ---------- */

function tellLine() {
  const before = area.value.slice(0, area.selectionStart);
  at.textContent = `Line ${before.split("\n").length}`;
  at.hidden = false;
}

// A field as wide as this one, holding the text before the line, is as high as the line is deep.
function depthOf(text) {
  const twin = area.cloneNode();
  twin.removeAttribute("id");
  twin.removeAttribute("name");
  twin.classList.add("twin");
  twin.setAttribute("aria-hidden", "true");
  twin.tabIndex = -1;
  area.after(twin);
  twin.value = text;
  const depth = twin.scrollHeight;
  twin.remove();
  return depth;
}

function goTo(number) {
  const lines = area.value.split("\n");
  const begin = lines.slice(0, number - 1).join("\n").length + (number > 1 ? 1 : 0);
  area.focus();
  area.setSelectionRange(begin, begin + (lines[number - 1] ?? "").length);
  area.scrollTop = Math.max(0, depthOf(area.value.slice(0, begin)) - area.clientHeight / 2);
  tellLine();
}

/* ---------- all together ---------- */

prune();
takeUp();
for (const look of form.querySelectorAll("[data-look]")) look.hidden = true;
if (area.value !== area.defaultValue) askSoon(0);

area.addEventListener("input", () => {
  keep(false);
  askSoon(pause);
});
for (const moved of ["keyup", "click", "focus"]) area.addEventListener(moved, tellLine);
form.addEventListener("submit", () => keep(true));
document.querySelector("#looks").addEventListener("click", (event) => {
  const found = event.target.closest("[data-line]");
  if (!found) return;
  event.preventDefault();
  goTo(Number(found.dataset.line));
});
