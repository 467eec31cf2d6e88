// The page of two-strides tag: plain scripts of its own, no request to anybody but the program that served it.
import { setClock, tick } from "./clock.js";
import { marksAllowed, wayOut } from "./form.js";
import { pressed } from "./keys.js";
import { show, state } from "./list.js";
import { at, field, make, rink, say, video } from "./page.js";
import { ask } from "./program.js";
import { clicked, draw } from "./rink.js";
import { discard, ended, faceoff, queue, save, undo } from "./save.js";
import { flipped, setUp, sped, teamLabels } from "./setup.js";
import { opened, strong, teamChosen } from "./strength.js";

async function book() {
  const button = at("book");
  button.disabled = true;
  say("Making the book ...");
  // The tab opens with the click; a browser may refuse one that opens later.
  const tab = window.open("", "book");
  if (tab) tab.document.title = "Making the book ...";
  await queue;
  const said = await ask("book");
  button.disabled = false;
  if (said !== null) {
    at("book-said").textContent = said.words;
    at("book-said").hidden = false;
    at("book-link").hidden = !said.made;
    say(said.made ? "The book is made" + (tab ? " and open in its own tab." : ": open it by the link below the list.") : "No book was made.");
    if (!said.made) at("problems").replaceChildren(make("p", said.words));
  }
  if (tab && said !== null && said.made) tab.location = at("to-book").href;
  else if (tab) tab.close();
}

async function end() {
  const said = await ask("end");
  if (said === null) return;
  say("Ended: " + said.words + ". This page can be closed.");
  document.querySelectorAll("button, input").forEach((e) => { e.disabled = true; });
}

function play(source) {
  video.src = source;
  video.hidden = false;
  at("pick").hidden = state.video;
}

async function start() {
  const said = await ask("state");
  if (said === null) return;
  setUp(said.setup);
  show(said);
  opened();
  at("said").textContent = said.opening;
  at("said").hidden = said.opening === "";
  say(said.opening);
  if (said.video) play("video");
  marksAllowed();
  draw();
  tick();
}

at("file").addEventListener("change", (e) => {
  const file = e.target.files[0];
  if (!file) return;
  if (video.src.startsWith("blob:")) URL.revokeObjectURL(video.src);
  play(URL.createObjectURL(file));
  at("desk").focus({ preventScroll: true });
});
video.addEventListener("error", () => {
  say("The browser cannot play this video. MP4 with H.264 and WebM work everywhere; exits can be tagged without it.");
});
for (const name of ["timeupdate", "seeked", "loadedmetadata"]) video.addEventListener(name, tick);
rink.addEventListener("click", clicked);
at("form").addEventListener("submit", (e) => { e.preventDefault(); save(); });
at("discard").addEventListener("click", discard);
at("undo").addEventListener("click", undo);
at("book").addEventListener("click", book);
at("end").addEventListener("click", end);
at("set-clock").addEventListener("click", setClock);
at("s-clock").addEventListener("keydown", (e) => { if (e.key === "Enter") setClock(); });
document.querySelectorAll("[data-setup]").forEach((i) => i.addEventListener("change", async () => {
  teamLabels();
  const said = await ask("setup", { [i.dataset.setup]: i.value.trim() });
  if (said !== null) show(said);
}));
const changes = (name, what) => document.querySelectorAll("input[name='" + name + "']").forEach((r) => r.addEventListener("change", () => what(r.value)));
changes("way_out", wayOut);
changes("ended", ended);
changes("strength", strong);
document.querySelectorAll("[data-faceoff]").forEach((b) => b.addEventListener("click", () => faceoff(b.dataset.faceoff)));
at("fast").addEventListener("change", sped);
changes("team", teamChosen);
changes("own_goal", flipped);
for (const name of ["x_m", "y_m", "end_x_m", "end_y_m"]) field(name).addEventListener("input", draw);
document.addEventListener("keydown", pressed);
start();
