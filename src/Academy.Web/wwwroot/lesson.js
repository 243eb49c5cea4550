// A lesson that keeps its reader's place, can be read aloud, and has its pictures ready for paper. Without this file the list of parts
// leads everywhere, and a form keeps a place by hand.

// Pictures further down wait until somebody comes near; whoever prints before that would find some of them missing.
addEventListener("load", () => {
  for (const picture of document.querySelectorAll(".lesson img")) picture.loading = "eager";
});

/* ---------- the place, kept while somebody reads ---------- */

const form = document.querySelector("#place");
const parts = form ? [...form.elements.Part.options].map((one) => document.getElementById(one.value)).filter(Boolean) : [];
let kept = null;
let wait = 0;

// The last heading above the middle of the window is the part that is read.
const here = () => parts.findLast((part) => part.getBoundingClientRect().top < innerHeight / 2)?.id;

function keep() {
  clearTimeout(wait);
  const part = here();
  if (!part || part === kept) return;
  kept = part;
  form.elements.Part.value = part;
  const body = new URLSearchParams(new FormData(form));
  body.set("IsQuiet", "true");
  fetch(form.action, { method: "POST", body, keepalive: true }).catch(() => {
    kept = null;
  });
}

if (parts.length > 0) {
  addEventListener("scroll", () => {
    clearTimeout(wait);
    wait = setTimeout(keep, 1500);
  }, { passive: true });
  addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden" && scrollY > 0) keep();
  });
}

/* ---------- read aloud, block by block ---------- */

const bar = document.querySelector("#aloud");
const go = document.querySelector("#aloud-go");
const halt = document.querySelector("#aloud-stop");
const voices = window.speechSynthesis;
const blocks = [...document.querySelectorAll(".lesson :is(h2, h3, p, li, figcaption, tr)")].filter(
  (block) => !block.querySelector("p, li") && !block.closest("#sources, .sources"),
);
let at = -1;

// Numbers of sources are for the eye.
function wordsOf(block) {
  const copy = block.cloneNode(true);
  for (const mark of copy.querySelectorAll(".cite, svg")) mark.remove();
  return copy.textContent.replace(/\s+/g, " ").trim();
}

function mark(block) {
  document.querySelector(".lesson .aloud-now")?.classList.remove("aloud-now");
  if (!block) return;
  block.classList.add("aloud-now");
  const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  block.scrollIntoView({ block: "center", behavior: calm ? "auto" : "smooth" });
}

function say(words) {
  go.textContent = words;
  halt.hidden = at < 0;
}

function stop() {
  at = -1;
  voices.cancel();
  mark(null);
  say(go.dataset.go);
}

function read(next) {
  at = next;
  if (at >= blocks.length) return stop();
  const words = wordsOf(blocks[at]);
  if (words === "") return read(at + 1);
  const speech = new SpeechSynthesisUtterance(words);
  speech.lang = document.documentElement.lang || "en-GB";
  speech.onend = () => {
    if (at === next) read(next + 1);
  };
  mark(blocks[at]);
  voices.speak(speech);
  say(go.dataset.pause);
}

// A part that is in the window is where somebody wants to begin.
const first = () => Math.max(0, blocks.findIndex((block) => block.getBoundingClientRect().bottom > 0));

function turn() {
  if (at < 0) return read(scrollY > 0 ? first() : 0);
  if (voices.paused) {
    voices.resume();
    return say(go.dataset.pause);
  }
  voices.pause();
  say(go.dataset.on);
}

// Some browsers have the words for it and no voice.
function offer() {
  bar.hidden = voices.getVoices().length === 0;
}

if (bar && voices && window.SpeechSynthesisUtterance) {
  go.addEventListener("click", turn);
  halt.addEventListener("click", () => {
    stop();
    go.focus();
  });
  addEventListener("pagehide", stop);
  voices.addEventListener?.("voiceschanged", offer);
  offer();
}
