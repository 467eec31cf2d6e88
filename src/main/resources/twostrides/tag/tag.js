// The page of two-strides tag: plain script, no request to anybody but the program that served it.
// What comes from outside is shown by textContent only.
"use strict";
(() => {
  const FIELDS = ["player", "period", "clock", "video_s", "x_m", "y_m", "end_x_m", "end_y_m", "note"];
  const GROUPS = ["way_out", "at_center", "ended", "pressure", "strength", "net_empty"];
  // What a key does: the group that it chooses in, and the word.
  const CHOICES = {
    __proto__: null,
    1: ["way_out", "carry"], 2: ["way_out", "pass"], 3: ["way_out", "chip"], 4: ["way_out", "long clearance"],
    5: ["way_out", "missed pass"], 6: ["way_out", "kept in"],
    q: ["at_center", "gained"], w: ["at_center", "released short"], e: ["at_center", "lost short"],
    r: ["at_center", "brought back"], t: ["at_center", "stopped"],
    a: ["ended", "icing"], s: ["ended", "own-zone restart"], d: ["ended", "opponent"], f: ["ended", "own"],
    g: ["ended", "goal against"], h: ["ended", "stopped"],
    z: ["pressure", "none"], x: ["pressure", "light"], c: ["pressure", "heavy"],
    v: ["strength", "even"], b: ["strength", "shorthanded"], n: ["strength", "power play"],
    7: ["net_empty", "none"], 8: ["net_empty", "own"], 9: ["net_empty", "opponent"], 0: ["net_empty", "both"],
    j: ["team", "home"], k: ["team", "away"],
  };
  const MARKED = ["carry", "pass"]; // ways out that have a mark at center
  const LEAP = 3; // seconds that comma and full stop move the video; assumed
  const STEP = 0.5; // metres that an arrow moves the cross; assumed
  const FAR = 3; // with Shift
  const NEAR = 0.1; // with Ctrl: the resolution of a place
  const START = { x: -15, y: 0 }; // where the cross waits: in the own zone
  const STALE = 409; // the program's answer to a page that does not show an exit as it is
  const CORRECTED = 2000; // ms in which another way out corrects the key; later it begins the next exit. Assumed
  const STOPS = ["icing", "own-zone restart", "goal against", "stopped"]; // the clock stands after these
  const SPEEDS = [0.25, 0.5, 0.75, 1, 1.5, 2];

  const at = (id) => document.getElementById(id);
  const field = (name) => at("f-" + name);
  const video = at("video");
  const rink = at("rink");
  const ice = at("ice");
  const marks = at("marks");
  const half = { x: Number(ice.dataset.halfLength), y: Number(ice.dataset.halfWidth) };
  const corner = Number(ice.dataset.corner);

  // Which page this is: undo takes back the steps of this one only. A page that is loaded again stays
  // the same, one that is opened in another tab does not.
  const PAGE = (() => {
    const way = performance.getEntriesByType("navigation")[0];
    const kept = way && way.type === "reload" ? sessionStorage.getItem("page") : null;
    const page = kept || Array.from(crypto.getRandomValues(new Uint8Array(8)), (b) => b.toString(16)).join("-");
    sessionStorage.setItem("page", page);
    return page;
  })();

  let state = { rows: [], setup: {}, players: [] };
  let logging = false; // an exit is being logged
  let editing = null; // the row that is being changed, as it was when that began
  let held = false; // the video was paused by us
  let busy = false;
  let began = 0; // when the key of the way out was pressed
  let way = ""; // that way out
  let clock = null; // what the game clock showed at a second of the video, and whether it runs
  let strength = ""; // from the last key on, of the team of strongSide
  let strongSide = "home";
  let queue = Promise.resolve(); // what is being saved, one after the other
  const steps = []; // what U takes back: whether a row was saved, and the clock before it
  let cross = { ...START };
  let moved = false; // the cross was moved since it appeared: only then Enter sets it
  let ownTeam = ""; // a team name of an edited row that is neither home nor away

  // ---- words

  function say(words) {
    at("live").textContent = words;
  }

  function clear(node) {
    while (node.firstChild) node.removeChild(node.firstChild);
  }

  function make(tag, words, kind) {
    const node = document.createElement(tag);
    if (words !== undefined) node.textContent = words;
    if (kind) node.className = kind;
    return node;
  }

  function metres(p) {
    const along = p.x < 0 ? Math.abs(p.x).toFixed(1) + " m behind center" : p.x.toFixed(1) + " m past center";
    const across = p.y === 0 ? "in the middle" : Math.abs(p.y).toFixed(1) + " m to the " + (p.y > 0 ? "left" : "right");
    return along + ", " + across;
  }

  function minutes(seconds) {
    const s = Math.floor(seconds);
    return Math.floor(s / 60) + ":" + String(s % 60).padStart(2, "0");
  }

  function count(rows) {
    const exits = rows.filter((r) => r.cells.way_out).length;
    const others = rows.length - exits;
    return exits + (exits === 1 ? " exit" : " exits") + (others === 0 ? "" : " and " + others + " more");
  }

  // What a row is, in a few words.
  function words(c) {
    const what = c.way_out || (c.faceoff ? "face-off " + c.faceoff : c.ended || c.strength);
    return [c.clock, c.team, c.player, what].filter((w) => w).join(", ");
  }

  // ---- the program

  async function ask(path, fields, refused = problems) {
    let answer;
    try {
      answer = await fetch(path, {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ ...fields, page: PAGE }),
      });
    } catch (e) {
      refused([{
        field: "", found: "no answer from the program", expected: "two-strides tag running",
        toDo: "Start it again with the same sheet: everything that was saved is kept. This was not saved.",
      }]);
      return null;
    }
    let said = null;
    try {
      said = await answer.json();
    } catch (e) {
      said = { problems: [{ field: "", found: "an answer that cannot be read", expected: "an answer of this program", toDo: "Load the page again." }] };
    }
    if (said.problems) {
      // Another page was faster: the list shows the exits as they are now, the form what was typed.
      if (answer.status === STALE) {
        const now = await ask("state");
        if (now !== null) show(now);
      }
      refused(said.problems, answer.status === STALE);
      return null;
    }
    return said;
  }

  const NAMES = {
    __proto__: null,
    way_out: "Way out", at_center: "At center", ended: "Ended in", pressure: "Pressure", strength: "Strength", net_empty: "Empty net",
    faceoff: "Face-off", team: "Team", player: "Player", period: "Period", clock: "Game clock", video_s: "Video second", x_m: "Released, along",
    y_m: "Released, across", end_x_m: "Ended, along", end_y_m: "Ended, across", note: "Note", date: "Date", home: "Home team",
    away: "Away team", game: "Name of the game",
  };

  function sentence(p) {
    return "found " + (p.found === "" ? "nothing" : "“" + p.found + "”") + ", expected " + p.expected + ". " + p.toDo;
  }

  // A problem of a field says what was found and expected there; one of another page is a sentence.
  function problems(list, otherPage) {
    const box = at("problems");
    clear(box);
    document.querySelectorAll(".err").forEach((e) => { e.textContent = ""; });
    document.querySelectorAll("[aria-invalid]").forEach((e) => e.removeAttribute("aria-invalid"));
    for (const p of list) {
      const words = otherPage ? p.toDo : sentence(p);
      box.appendChild(make("p", (NAMES[p.field] ? NAMES[p.field] + ": " : "") + words));
      const beside = at("e-" + p.field);
      if (beside) beside.textContent = words;
      const input = field(p.field) || at("s-" + p.field);
      if (input) input.setAttribute("aria-invalid", "true");
    }
    if (list.length > 0) {
      const first = list.map((p) => field(p.field) || at("s-" + p.field)).find((i) => i);
      if (first) first.focus();
    }
  }

  // ---- the form

  function chosen(name) {
    const radio = document.querySelector("input[name='" + name + "']:checked");
    return radio ? radio.value : "";
  }

  function choose(name, value) {
    document.querySelectorAll("input[name='" + name + "']").forEach((r) => { r.checked = r.value === value; });
  }

  function place(xName, yName) {
    const x = field(xName).value.trim();
    const y = field(yName).value.trim();
    if (x === "" || y === "" || !isFinite(Number(x)) || !isFinite(Number(y))) return null;
    return { x: Number(x), y: Number(y) };
  }

  function teamName() {
    if (ownTeam !== "" && chosen("team") === "") return ownTeam;
    const side = chosen("team");
    return side === "" ? "" : at("s-" + side).value.trim();
  }

  function marksAllowed() {
    const allowed = MARKED.includes(chosen("way_out"));
    at("g-at_center").disabled = !allowed;
    if (!allowed) choose("at_center", "");
  }

  function draft() {
    const fields = {};
    for (const name of FIELDS) fields[name] = field(name).value.trim();
    for (const name of GROUPS) fields[name] = chosen(name);
    Object.assign(fields, game());
    if (editing !== null) {
      fields.faceoff = editing.cells.faceoff || "";
      for (const name of ["game", "date", "home", "away", "opponent"]) fields[name] = editing.cells[name] || "";
    }
    for (const name of Object.keys(fields)) if (fields[name] === "") delete fields[name];
    return fields;
  }

  const fast = () => at("fast").checked;

  // A way out, by key or tap. At game speed it ends the exit before, whose end nobody said.
  function wayOut(word) {
    if (logging && fast() && editing === null && performance.now() - began > CORRECTED) {
      choose("way_out", way);
      keep();
    }
    choose("way_out", word);
    way = word;
    begin();
    marksAllowed();
    rink.focus({ preventScroll: true });
  }

  function begin() {
    if (logging) return;
    logging = true;
    began = performance.now();
    if (!fast() && !video.hidden && !video.paused) {
      video.pause();
      held = true;
    }
    if (fast() && clock !== null && !clock.runs) turn(true);
    for (const [name, value] of Object.entries(now())) field(name).value = value;
    wait(START);
    problems([]);
    draw();
  }

  // When it is, as the fields of a row say it.
  function now() {
    return { period: at("s-period").value, clock: clockNow(), video_s: hasVideo() ? video.currentTime.toFixed(1) : "" };
  }

  function hasVideo() {
    return !video.hidden && video.readyState > 0;
  }

  function reset() {
    logging = false;
    editing = null;
    ownTeam = "";
    for (const name of FIELDS) field(name).value = "";
    for (const name of ["way_out", "at_center", "ended", "pressure", "net_empty"]) choose(name, "");
    choose("strength", strength);
    wait(START);
    problems([]);
    marksAllowed();
    at("draft-title").textContent = "The exit";
    document.querySelectorAll("tr.now").forEach((r) => r.classList.remove("now"));
    draw();
    if (held) {
      held = false;
      const playing = video.play();
      if (playing) playing.catch(() => {});
    }
    at("desk").focus({ preventScroll: true });
  }

  async function save() {
    if (busy) return;
    if (!logging) {
      say("Press the key of a way out first: 1 to 6.");
      return;
    }
    if (atSpeed()) {
      keep();
      return;
    }
    busy = true;
    try {
      const fields = draft();
      const said = editing === null
        ? await ask("add", fields)
        : await ask("edit", { ...fields, id: String(editing.id), version: String(editing.version) });
      if (said === null) return;
      steps.push({ row: true, clock });
      show(said);
      reset();
      say("Saved: " + words(fields) + ". " + count(said.rows) + ".");
    } finally {
      busy = false;
    }
  }

  // An exit that is saved while the next one may begin; without a clock it waits for one.
  const atSpeed = () => fast() && editing === null && field("clock").value !== "";

  function keep(before = clock) {
    const fields = draft();
    reset();
    log(fields, before);
  }

  function log(fields, before) {
    for (const name of Object.keys(fields)) if (fields[name] === "") delete fields[name];
    queue = queue.then(async () => {
      const said = await ask("add", fields, (list) => notSaved(fields, list));
      if (said === null) return;
      steps.push({ row: true, clock: before });
      show(said);
      say("Saved: " + words(fields) + ". " + count(said.rows) + ".");
    });
  }

  // What was refused at game speed waits for a quiet moment; no key may land in its fields.
  function notSaved(fields, list) {
    const line = make("p", "Not saved: " + words(fields) + ". " + list.map((p) => (NAMES[p.field] ? NAMES[p.field] + ": " : "") + sentence(p)).join(" ") + " ");
    const correct = make("button", "Correct it");
    correct.type = "button";
    correct.addEventListener("click", () => {
      if (logging) {
        say("Save or discard the open exit first.");
        return;
      }
      line.remove();
      open(fields);
      problems(list);
    });
    line.appendChild(correct);
    at("kept").appendChild(line);
    say("Not saved: " + words(fields) + ".");
  }

  // What happened with no exit open: a whistle stops the clock.
  function happened(word) {
    choose("ended", "");
    if (word === "" || word === "own") {
      say("Press the key of a way out first: 1 to 6.");
      return;
    }
    log({ ...game(), ...now(), ended: word }, clock);
    if (STOPS.includes(word)) turn(false);
  }

  // How the open exit ended: at game speed that saves it.
  function ended(word) {
    if (!logging) {
      happened(word);
    } else if (atSpeed() && word !== "") {
      const before = clock;
      if (STOPS.includes(word)) turn(false);
      keep(before);
    }
  }

  function faceoff(word) {
    if (logging && !atSpeed()) {
      say("Save or discard the open exit first.");
      return;
    }
    if (logging) keep();
    log({ ...game(), ...now(), faceoff: word }, clock);
    turn(true);
  }

  // Strength in an open exit is the exit's too; it holds from now on, which is when a kill begins or ends.
  function strong(word) {
    if (editing !== null) return;
    const changed = strength !== word && word !== "";
    strength = word;
    if (!logging && changed && clock !== null) log({ ...game(), ...now(), strength: word }, clock);
  }

  // What every row says of its game.
  function game() {
    const fields = { team: teamName() };
    for (const name of ["game", "date", "home", "away"]) fields[name] = at("s-" + name).value.trim();
    return fields;
  }

  function discard() {
    if (!logging) return;
    reset();
    say("Discarded; nothing was saved.");
  }

  function undo() {
    if (busy) return;
    if (logging && fast() && editing === null) {
      discard();
      return;
    }
    queue = queue.then(async () => {
      const step = steps.pop();
      if (step && !step.row) {
        await clockIs(step.clock);
        clockSaid();
        say("Undone: the clock is " + (clock === null ? "not set" : "as it was") + ".");
        return;
      }
      const said = await ask("undo");
      if (said === null) return;
      show(said);
      if (step && step.clock !== clock) await clockIs(step.clock);
      say(said.said + " " + count(said.rows) + ".");
    });
  }

  // ---- the clock

  function seconds(clock) {
    const m = /^(\d{1,3}):([0-5]\d(?:\.\d+)?)$/.exec(clock.trim());
    if (m) return 60 * Number(m[1]) + Number(m[2]);
    return /^\d+(\.\d+)?$/.test(clock.trim()) ? Number(clock) : NaN;
  }

  // The clock that was set, less the seconds of video since; a whistle stops it, a face-off starts it.
  function clockLeft() {
    if (clock === null) return NaN;
    const since = clock.runs && hasVideo() ? video.currentTime - clock.video : 0;
    return Math.max(0, clock.left - since);
  }

  function clockNow() {
    const left = clockLeft();
    return isFinite(left) ? minutes(left) : "";
  }

  function clockIs(set) {
    clock = set;
    tick();
    const tenths = (s) => minutes(s) + (s % 1 < 0.05 ? "" : "." + Math.min(9, Math.round((s % 1) * 10)));
    return ask("setup", set === null
      ? { clock: "", clock_video_s: "", clock_runs: "" }
      : { clock: tenths(set.left), clock_video_s: set.video.toFixed(1), clock_runs: set.runs ? "yes" : "no" });
  }

  function turn(runs) {
    if (clock !== null) clockIs({ left: clockLeft(), video: hasVideo() ? video.currentTime : 0, runs });
  }

  async function setClock() {
    const typed = at("s-clock").value.trim();
    if (!isFinite(seconds(typed))) {
      say("The clock was not set: found “" + typed + "”, expected a clock such as 13:07.");
      at("s-clock").setAttribute("aria-invalid", "true");
      return;
    }
    at("s-clock").removeAttribute("aria-invalid");
    steps.push({ row: false, clock });
    // The next key is a command already, before the program has answered.
    at("s-clock").value = "";
    at("game").open = teamName() === "";
    at("desk").focus({ preventScroll: true });
    say("Clock set: " + typed + (hasVideo() ? " at " + minutes(video.currentTime) + " of the video." : "."));
    const answered = clockIs({ left: seconds(typed), video: hasVideo() ? video.currentTime : 0, runs: true });
    if (logging && editing === null) field("clock").value = clockNow();
    clockSaid();
    await answered;
    await ask("setup", { period: at("s-period").value });
  }

  function clockSaid() {
    at("undo").disabled = !state.canUndo && steps.length === 0;
    if (clock === null) return;
    at("clock-said").textContent = "Clock set: " + minutes(clock.left) + " at " + minutes(clock.video)
      + " of the video. It runs with the video, and stands from a whistle (A, S, G, H) to a face-off (M, I).";
  }

  function tick() {
    const parts = [];
    if (hasVideo()) parts.push("video " + minutes(video.currentTime));
    if (clock !== null) parts.push("period " + at("s-period").value + ", clock " + clockNow() + (clock.runs ? "" : " (stands)"));
    at("now").textContent = parts.join(", ");
  }

  // ---- the rink

  const turned = () => (chosen("own_goal") === "right" ? -1 : 1);

  function inside(p) {
    let x = Math.max(-half.x, Math.min(half.x, p.x));
    let y = Math.max(-half.y, Math.min(half.y, p.y));
    const cx = Math.abs(x) - (half.x - corner);
    const cy = Math.abs(y) - (half.y - corner);
    const out = Math.hypot(cx, cy);
    if (cx > 0 && cy > 0 && out > corner) {
      x = Math.sign(x) * (half.x - corner + (cx / out) * corner);
      y = Math.sign(y) * (half.y - corner + (cy / out) * corner);
    }
    const tenth = (v) => Math.round(v * 10) / 10 + 0; // no zero with a minus sign
    return { x: tenth(x), y: tenth(y) };
  }

  function svg(tag, attributes, kind) {
    const node = document.createElementNS("http://www.w3.org/2000/svg", tag);
    for (const [k, v] of Object.entries(attributes)) node.setAttribute(k, v);
    node.setAttribute("class", kind);
    return node;
  }

  function draw() {
    clear(marks);
    const t = turned();
    const onScreen = (p) => ({ x: t * p.x, y: -t * p.y });
    const released = place("x_m", "y_m");
    const ended = place("end_x_m", "end_y_m");
    if (released && ended) {
      const a = onScreen(released);
      const b = onScreen(ended);
      marks.appendChild(svg("line", { x1: a.x, y1: a.y, x2: b.x, y2: b.y }, "path"));
    }
    if (released) {
      const a = onScreen(released);
      marks.appendChild(svg("circle", { cx: a.x, cy: a.y, r: 0.7 }, "released"));
    }
    if (ended) {
      const b = onScreen(ended);
      marks.appendChild(svg("circle", { cx: b.x, cy: b.y, r: 0.8 }, "finished"));
    }
    if (logging && !(released && ended)) {
      const c = onScreen(cross);
      marks.appendChild(svg("line", { x1: c.x - 1.2, y1: c.y, x2: c.x + 1.2, y2: c.y }, "cross"));
      marks.appendChild(svg("line", { x1: c.x, y1: c.y - 1.2, x2: c.x, y2: c.y + 1.2 }, "cross"));
    }
    at("end-left").textContent = t > 0 ? "own goal" : "their goal";
    at("end-right").textContent = t > 0 ? "their goal" : "own goal";
    at("l-ended").textContent = logging ? "Ended in" : "No exit open: what happened";
    at("step").textContent = !logging
      ? "Press a way out: 1 to 6"
      : fast() && editing === null ? "How did it end? (a click: where released)" : !released ? "Where was it released?" : !ended ? "Where did it end?" : "Enter saves";
  }

  // The cross waits at a place that nobody has chosen.
  function wait(p) {
    cross = { ...p };
    moved = false;
  }

  function set(p) {
    if (!logging) {
      say("Press the key of a way out first: 1 to 6.");
      return;
    }
    const here = inside(p);
    const first = place("x_m", "y_m") === null;
    if (!first && place("end_x_m", "end_y_m") !== null) {
      say("Both places are set. Backspace takes the last one back, Enter saves.");
      return;
    }
    field(first ? "x_m" : "end_x_m").value = here.x.toFixed(1);
    field(first ? "y_m" : "end_y_m").value = here.y.toFixed(1);
    wait(here);
    say((first ? "Released " : "Ended ") + metres(here) + ".");
    draw();
  }

  function takeBack() {
    const which = place("end_x_m", "end_y_m") !== null ? ["end_x_m", "end_y_m"] : ["x_m", "y_m"];
    for (const name of which) field(name).value = "";
    wait(cross);
    draw();
    say("Place taken back.");
  }

  function clicked(event) {
    const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(ice.getScreenCTM().inverse());
    set({ x: turned() * p.x, y: -turned() * p.y });
  }

  function move(event) {
    const by = event.shiftKey ? FAR : event.ctrlKey ? NEAR : STEP;
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    cross = inside({ x: cross.x + turned() * way[0] * by, y: cross.y + turned() * way[1] * by });
    moved = true;
    draw();
    say("Cross " + metres(cross) + ".");
  }

  // ---- what was tagged

  function show(said) {
    state = said;
    at("sheet").textContent = said.sheet;
    at("warning").textContent = said.warning;
    at("warning").hidden = said.warning === "";
    at("count").textContent = said.rows.length === 0 ? "Nothing yet." : count(said.rows) + " saved in " + said.sheet + ", the newest first.";
    const players = at("players");
    clear(players);
    for (const p of said.players) {
      const option = document.createElement("option");
      option.value = p;
      players.appendChild(option);
    }
    const rows = at("rows");
    clear(rows);
    for (const row of [...said.rows].reverse()) rows.appendChild(line(row));
    clockSaid();
    tick();
  }

  function line(row) {
    const c = row.cells;
    const tr = document.createElement("tr");
    tr.classList.toggle("now", editing !== null && editing.id === row.id);
    const first = make("th", "P" + (c.period || "?") + " " + (c.clock || ""));
    first.scope = "row";
    tr.appendChild(first);
    const change = make("td", undefined, "w");
    const named = (c.way_out ? " the exit at " : " what was at ") + (c.clock || "?") + " of period " + (c.period || "?");
    const edit = make("button", "Edit");
    edit.type = "button";
    edit.setAttribute("aria-label", "Edit" + named);
    edit.addEventListener("click", () => load(row, tr));
    const remove = make("button", "Delete");
    remove.type = "button";
    remove.setAttribute("aria-label", "Delete" + named);
    remove.addEventListener("click", () => takeOut(row));
    change.append(edit, " ", remove);
    tr.appendChild(change);
    tr.appendChild(make("td", c.team, "name"));
    tr.appendChild(make("td", c.player || "", "name"));
    tr.appendChild(make("td", c.way_out || "", "w"));
    tr.appendChild(make("td", c.at_center || "", "w"));
    tr.appendChild(make("td", [c.ended, c.faceoff ? "face-off " + c.faceoff : ""].filter((w) => w).join(", "), "w"));
    tr.appendChild(make("td", c.strength || "", "w"));
    tr.appendChild(make("td", c.x_m ? c.x_m + ", " + c.y_m : "", "w"));
    tr.appendChild(make("td", c.end_x_m ? c.end_x_m + ", " + c.end_y_m : "", "w"));
    const where = make("td", undefined, "w");
    if (c.video_s) {
      const go = make("button", minutes(Number(c.video_s)));
      go.type = "button";
      go.setAttribute("aria-label", "Show second " + c.video_s + " of the video");
      go.addEventListener("click", () => { if (hasVideo()) video.currentTime = Math.max(0, Number(c.video_s) - LEAP); });
      where.appendChild(go);
    }
    tr.appendChild(where);
    return tr;
  }

  // Fills the form from a row.
  function open(c) {
    if (logging) reset();
    logging = true;
    for (const name of FIELDS) field(name).value = c[name] || "";
    for (const name of GROUPS) choose(name, c[name] || "");
    const side = c.team === at("s-home").value.trim() ? "home" : c.team === at("s-away").value.trim() ? "away" : "";
    choose("team", side);
    ownTeam = side === "" ? c.team || "" : "";
    marksAllowed();
    draw();
    // No field has the caret: a key is a command here, as it is for a new exit.
    rink.focus({ preventScroll: true });
  }

  function load(row, tr) {
    open(row.cells);
    editing = row;
    draw();
    at("draft-title").textContent = "Change what was at " + (row.cells.clock || "?");
    tr.classList.add("now");
    at("form").scrollIntoView({ block: "nearest" });
    say("Changing what was at " + (row.cells.clock || "?") + ". L leads to its clock, Enter saves, Escape leaves it as it was.");
  }

  async function takeOut(row) {
    const said = await ask("delete", { id: String(row.id), version: String(row.version) });
    if (said === null) return;
    if (editing !== null && editing.id === row.id) reset();
    steps.push({ row: true, clock });
    show(said);
    at("desk").focus({ preventScroll: true });
    say("Deleted. U brings it back. " + count(said.rows) + ".");
  }

  // ---- book and end

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

  // ---- keys

  const typing = (e) => e.matches("input[type='text'], input[type='number'], input[type='file']");

  function enter(target) {
    if (target === rink && logging && moved && !(place("x_m", "y_m") && place("end_x_m", "end_y_m"))) set(cross);
    else save();
  }

  function spaced(target) {
    if (video.hidden || target.matches("button, a, summary, video, input")) return false;
    if (video.paused) {
      const playing = video.play();
      if (playing) playing.catch(() => {});
    } else {
      video.pause();
    }
    return true;
  }

  function faster(way) {
    const now = SPEEDS.indexOf(video.playbackRate);
    const next = SPEEDS[Math.max(0, Math.min(SPEEDS.length - 1, (now < 0 ? 3 : now) + way))];
    video.playbackRate = next;
    say("Speed " + next + ".");
  }

  function single(key, target) {
    if (CHOICES[key]) {
      const [group, word] = CHOICES[key];
      if (group === "at_center" && at("g-at_center").disabled) {
        say("Only a carry or a pass has a mark at center.");
        return true;
      }
      if (group === "way_out") {
        wayOut(word);
        say(NAMES[group] + ": " + word + ".");
        return true;
      }
      // The same key again takes an optional word back.
      const again = chosen(group) === word && group !== "team" && (logging || group !== "strength");
      choose(group, again ? "" : word);
      if (group === "team") teamChosen();
      say(again ? NAMES[group] + ": not known." : NAMES[group] + ": " + (group === "team" ? teamName() : word) + ".");
      if (group === "ended") ended(again ? "" : word);
      if (group === "strength") strong(again ? "" : word);
      return true;
    }
    switch (key) {
      case "u": undo(); return true;
      case "m": faceoff("won"); return true;
      case "i": faceoff("lost"); return true;
      case "/": at("fast").checked = !fast(); sped(); return true;
      case "o": at("game").open = true; at("s-clock").focus(); return true;
      case "p": field("player").focus(); return true;
      case "l": if (logging) field("clock").select(); return logging;
      case "y": choose("own_goal", turned() > 0 ? "right" : "left"); flipped(); return true;
      case ",": if (hasVideo()) video.currentTime = Math.max(0, video.currentTime - LEAP); return true;
      case ".": if (hasVideo()) video.currentTime += LEAP; return true;
      case "-": faster(-1); return true;
      case "+": case "=": faster(1); return true;
      case " ": return spaced(target);
      default: return false;
    }
  }

  function pressed(event) {
    if (event.altKey || event.metaKey || event.isComposing) return;
    const target = event.target;
    if (event.key === "Escape") {
      discard();
      return;
    }
    if (target === rink && event.key.startsWith("Arrow") && logging) {
      move(event);
      event.preventDefault();
      return;
    }
    if (event.ctrlKey || typing(target)) return;
    if (event.key === "Enter" && !target.matches("button, a, summary, video")) {
      event.preventDefault();
      if (!event.repeat) enter(target);
      return;
    }
    if (event.key === "Backspace" && target === rink && logging) {
      takeBack();
      event.preventDefault();
      return;
    }
    if (event.repeat || !at("keys").checked) return;
    if (single(event.key.toLowerCase(), target)) event.preventDefault();
  }

  // ---- setting up

  function teamLabels() {
    for (const side of ["home", "away"]) {
      const name = at("s-" + side).value.trim();
      const label = document.querySelector("input[name='team'][value='" + side + "']").parentNode.querySelector("span");
      label.textContent = name === "" ? side + " (no name yet)" : name;
    }
  }

  // The other team's strength is the other way round.
  function teamChosen() {
    ownTeam = "";
    const side = chosen("team");
    if (editing === null && side !== strongSide) {
      strength = strength === "shorthanded" ? "power play" : strength === "power play" ? "shorthanded" : strength;
      choose("strength", strength);
      strongSide = side;
    }
    ask("setup", { team: side });
  }

  function sped() {
    draw();
    say(fast() ? "At game speed: the video runs on, and how it ended saves." : "The video is held while an exit is logged; Enter saves.");
    ask("setup", { fast: fast() ? "yes" : "no" });
  }

  function flipped() {
    draw();
    say("Own goal " + chosen("own_goal") + ".");
    ask("setup", { own_goal: chosen("own_goal") });
  }

  function setUp(setup) {
    document.querySelectorAll("[data-setup]").forEach((i) => {
      if (setup[i.dataset.setup] !== undefined) i.value = setup[i.dataset.setup];
    });
    choose("team", setup.team || "home");
    choose("own_goal", setup.own_goal || "left");
    at("fast").checked = setup.fast === "yes";
    const left = setup.clock === undefined ? NaN : seconds(setup.clock);
    if (isFinite(left)) clock = { left, video: Number(setup.clock_video_s || 0), runs: setup.clock_runs !== "no" };
    teamLabels();
    at("game").open = !(setup.home && setup.away && setup.clock);
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
    strongSide = chosen("team");
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
})();
