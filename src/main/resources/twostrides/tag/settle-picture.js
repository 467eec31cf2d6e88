// Clicks on the picture of the video: marks of the rink tie one picture to the ice, then men are clicked on it.
// The program fits and answers; this script keeps the clicks. What comes from outside is shown by textContent only.
export function settlePicture(desk) {
  const SAME = 0.02; // seconds of video within which it is one picture; assumed
  const STEP = 8; // px of the screen that an arrow moves the cross; assumed
  const FAR = 50; // with Shift
  const NEAR = 1; // with Ctrl
  const OFF = 3; // px of the screen by which a click is off where the field says nothing; assumed

  const { at, video, say } = desk;
  const lens = at("lens");
  const sight = at("sight");
  const list = at("mark-list");

  let marks = []; // { id, name, x, y } of the rink
  let fewest = 0;
  let on = false;
  let more = false; // further marks are picked on the rink
  let chosen = ""; // the mark that the next click is
  let sets = []; // { second, clicks: [{ id, u, v }], said }: a picture's marks, and the program's answer
  let man = null; // what was said of the man clicked last, and in which picture
  let wrong = ""; // why the last click leads nowhere
  let cross = null;
  let queue = Promise.resolve(); // clicks and keys one at a time, in their order

  const now = (s) => Math.abs(s.second - video.currentTime) < SAME;
  const here = () => sets.find(now);
  const fits = () => Boolean(here() && here().said);
  const moved = () => !here() && sets.some((s) => s.said);
  const picking = () => on && (more || !fits());
  const size = () => (sight.getScreenCTM() ? sight.getScreenCTM().a : 1); // px of the screen for one of the video

  function after(act) {
    queue = queue.then(act, act);
  }

  function ask(s, point) {
    const off = Number(at("click-error").value) > 0 ? Number(at("click-error").value) : OFF;
    return desk.ask("picture", {
      icing: String(desk.icing()),
      marks: s.clicks.map((c) => [c.id, c.u, c.v].join(",")).join(";"),
      error: String(off / size()),
      width: String(video.videoWidth),
      height: String(video.videoHeight),
      man: point ? point.u + "," + point.v : "",
    }, (words) => { wrong = words.charAt(0).toUpperCase() + words.slice(1); });
  }

  async function fit(s) {
    s.said = null;
    man = null;
    wrong = "";
    if (s.clicks.length >= fewest) s.said = await ask(s);
    desk.draw();
  }

  function choose(id) {
    chosen = id;
    list.value = id;
    if (id !== "") say(marks.find((m) => m.id === id).name + ": click it on the picture.");
    desk.draw();
  }

  /** The mark nearest to a place of the rink is the next one. */
  function pick(p) {
    const far = (m) => Math.hypot(m.x - p.x, m.y - p.y);
    choose(marks.reduce((a, b) => (far(b) < far(a) ? b : a)).id);
    lens.focus({ preventScroll: true });
  }

  async function mark(point) {
    desk.remember();
    let s = here();
    if (!s) {
      s = { second: video.currentTime, clicks: [] };
      sets.push(s);
    }
    s.clicks = s.clicks.filter((c) => c.id !== chosen).concat({ id: chosen, ...point });
    choose("");
    await fit(s);
    say(s.clicks.length + (s.clicks.length === 1 ? " mark." : " marks."));
  }

  async function click(point) {
    if (point.u < 0 || point.v < 0 || point.u > video.videoWidth || point.v > video.videoHeight) return;
    video.pause();
    if (chosen !== "") {
      await mark(point);
    } else if (!fits()) {
      say("Pick a mark first, in the list or on the rink.");
    } else {
      const second = here().second;
      wrong = "";
      const said = await ask(here(), point);
      if (said === null) {
        desk.draw();
        return;
      }
      more = false;
      man = { ...said, second };
      desk.set({ ...desk.inside(said), error: said.error, second, ...point });
    }
  }

  async function keep() {
    const last = sets.filter((s) => s.said).pop();
    if (!on || !moved() || !last) return;
    desk.remember();
    const s = { second: video.currentTime, clicks: last.clicks.map((c) => ({ ...c })) };
    sets.push(s);
    await fit(s);
    say("Marks kept. Where a line lies beside the ice, choose a mark again and click it.");
  }

  function words() {
    const s = here();
    if (wrong !== "") return { words: wrong, rough: true };
    if (man && now(man)) return man;
    if (s && s.said) return s.said;
    if (moved()) {
      return { words: "The video has moved on, and marks hold for one picture. Set them again here. Where the camera stood still, keep them (K) and look whether the lines lie on the ice. Or click on the rink: P leaves the picture.", rough: true };
    }
    return { words: "Choose a mark in the list or on the rink, then click it on the picture: " + (s ? s.clicks.length : 0) + " of " + fewest + ". Take marks far apart, and some near the men.", rough: false };
  }

  function add(tag, attributes, kind, text) {
    const node = document.createElementNS("http://www.w3.org/2000/svg", tag);
    for (const [k, v] of Object.entries(attributes)) node.setAttribute(k, v);
    node.setAttribute("class", kind);
    if (text) node.textContent = text;
    sight.appendChild(node);
  }

  const plus = (p, r) => "M" + (p.u - r) + " " + p.v + "h" + 2 * r + "M" + p.u + " " + (p.v - r) + "v" + 2 * r;

  function draw() {
    on = on && !video.hidden;
    lens.hidden = !on;
    at("marking").hidden = !on;
    at("desk").classList.toggle("onpicture", on);
    at("on-picture").setAttribute("aria-pressed", String(on));
    video.controls = !on;
    if (!on) return;
    const { words: text, rough } = words();
    at("fit").textContent = text;
    at("fit").classList.toggle("care", rough);
    at("more").setAttribute("aria-pressed", String(picking()));
    at("keep").hidden = !moved();
    sight.setAttribute("viewBox", "0 0 " + video.videoWidth + " " + video.videoHeight);
    sight.replaceChildren();
    const px = 1 / size();
    const s = here();
    if (fits()) {
      for (const points of s.said.lines) add("polyline", { points }, "seen");
      const [u, v] = (s.said.puck || "").split(",").map(Number);
      if (s.said.puck) add("circle", { cx: u, cy: v, r: 9 * px }, "seen puck");
    }
    for (const c of s ? s.clicks : []) add("path", { d: plus(c, 7 * px) }, "seen clicked");
    desk.men().forEach((m, i) => {
      for (const p of [m.at, m.later]) {
        if (!p || p.second === undefined || !now(p)) continue;
        add("circle", { cx: p.u, cy: p.v, r: 6 * px }, "seen who-ring");
        add("text", { x: p.u + 8 * px, y: p.v - 6 * px, "font-size": 15 * px }, "seen-who", String(i + 1));
      }
    });
    if (cross && document.activeElement === lens) add("path", { d: plus(cross, 16 * px) }, "seen aim");
  }

  /** The marks on the rink, while they are picked there. */
  function drawMarks(add, place) {
    if (!picking()) return;
    const set = (here() || { clicks: [] }).clicks.map((c) => c.id);
    for (const m of marks) {
      const p = place(m);
      add("circle", { cx: p.x, cy: p.y, r: 0.7 }, "pick" + (m.id === chosen ? " chosen" : set.includes(m.id) ? " set" : ""));
    }
  }

  function toggle() {
    if (!on && !(video.videoWidth > 0)) {
      say("There is no picture yet: choose the video first.");
      return;
    }
    on = !on;
    more = false;
    wrong = "";
    chosen = list.value = "";
    video.pause();
    desk.draw();
    if (on) lens.focus({ preventScroll: true });
  }

  /** Keys of the list and of the picture; true where a key was one of them. */
  function pressed(e) {
    if (e.target === list) {
      if (e.key === "Enter") lens.focus({ preventScroll: true });
      return true;
    }
    if (e.target !== lens) return false;
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[e.key];
    if (way) {
      const by = (e.shiftKey ? FAR : e.ctrlKey ? NEAR : STEP) / size();
      const held = (v, most) => Math.max(0, Math.min(most, v));
      cross = { u: held(cross.u + way[0] * by, video.videoWidth), v: held(cross.v + way[1] * by, video.videoHeight) };
      draw();
    } else if (e.key === " ") {
      const point = { ...cross };
      after(() => click(point));
    } else {
      return false;
    }
    e.preventDefault();
    return true;
  }

  lens.addEventListener("click", (e) => {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(sight.getScreenCTM().inverse());
    cross = { u: p.x, v: p.y };
    after(() => click({ u: p.x, v: p.y }));
  });
  for (const type of ["focus", "blur"]) {
    lens.addEventListener(type, () => {
      cross = cross || { u: video.videoWidth / 2, v: video.videoHeight / 2 };
      draw();
    });
  }
  list.addEventListener("change", () => choose(list.value));
  at("on-picture").addEventListener("click", toggle);
  at("more").addEventListener("click", () => {
    more = !more;
    desk.draw();
  });
  at("keep").addEventListener("click", () => after(keep));
  at("click-error").addEventListener("change", () => after(() => (here() ? fit(here()) : null)));
  for (const type of ["loadedmetadata", "seeked", "timeupdate"]) {
    video.addEventListener(type, () => {
      if (on) desk.draw();
    });
  }
  window.addEventListener("resize", draw);

  return {
    after,
    draw,
    drawMarks,
    picking,
    pick,
    pressed,
    copy: () => sets.map((s) => ({ ...s })),
    restore: (kept) => {
      sets = kept;
      man = null;
      wrong = "";
    },
    clear: () => {
      sets = [];
      man = null;
      wrong = "";
      choose("");
    },
    start: (said) => {
      ({ marks, fewest } = said);
      list.replaceChildren(new Option("choose a mark", ""), ...marks.map((m) => new Option(m.name, m.id)));
    },
  };
}
