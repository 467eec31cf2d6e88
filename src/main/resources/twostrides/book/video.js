// Video of the games: files stay on this machine, a page only plays them. A clip plays from its own
// game's file or not at all, and stops at its end.
var VIDEO = (function () {
  'use strict';
  var make = KIT.make;
  var LEAD = 4; // seconds before the row's second; assumed, can be changed on the page
  var AFTER = 12; // seconds after it; assumed, can be changed on the page
  var PRINT = 1 << 20; // bytes that tell a file from others
  var SHORT = 5; // seconds by which a game's file may end before its last clip; assumed

  // ---- games: their last clip, and seconds that are inferred ----
  var games = new Map(GAMES.games.map(function (g) { return [g[0], { last: g[1], unsure: g[2] }]; }));
  function setting(key, usual) {
    var v = parseFloat(KIT.remembered(key));
    return v >= 0 && v <= 120 ? v : usual;
  }
  function span(clip) {
    var known = games.get(clip.game);
    var doubt = known && known.unsure.filter(function (u) { return Math.abs(u[0] - clip.at) < 1; })[0];
    var off = doubt ? doubt[1] : 0;
    return { start: Math.max(0, clip.at - setting('lead', LEAD) - off), end: clip.at + Math.max(1, setting('after', AFTER)) + off,
      doubt: doubt ? doubt[2] : '' };
  }

  // ---- which file is which game: by its name until it was played, from then on by its first megabyte ----
  var files = []; // { name, size, file or url, print }
  var confirmed = new Map(); // game: print
  try {
    confirmed = new Map(JSON.parse(KIT.remembered('files-' + GAMES.key) || '[]'));
  } catch (e) { /* what is no list is forgotten */ }
  function confirm(game, file) {
    confirmed.forEach(function (print, g) { if (print === file.print) { confirmed.delete(g); } });
    confirmed.set(game, file.print);
    KIT.remember('files-' + GAMES.key, JSON.stringify(Array.from(confirmed)));
  }
  function hex(bytes) {
    return Array.from(new Uint8Array(bytes)).map(function (b) { return ('0' + b.toString(16)).slice(-2); }).join('');
  }
  function print(file) {
    if (file.print) { return Promise.resolve(); }
    var plainly = file.name + ' ' + file.size;
    if (!window.crypto || !crypto.subtle) { file.print = plainly; return Promise.resolve(); }
    return file.file.slice(0, PRINT).arrayBuffer()
      .then(function (b) { return crypto.subtle.digest('SHA-256', b); })
      .then(function (d) { file.print = file.size + ' ' + hex(d); })
      .catch(function () { file.print = plainly; });
  }
  function line(t) { return ' ' + PICKS.tokens(t).join(' ') + ' '; }
  // The game whose id stands in a name, word by word; of two the longer one.
  function named(name) {
    var text = line(name.replace(/\.[^.]*$/, ''));
    var found = Array.from(games.keys()).filter(function (g) { return line(g).length > 2 && text.indexOf(line(g)) >= 0; });
    var longest = Math.max.apply(null, found.map(function (g) { return line(g).length; }));
    found = found.filter(function (g) { return line(g).length === longest; });
    return found.length === 1 ? found[0] : '';
  }
  function gameOf(file) {
    var is = Array.from(confirmed).filter(function (c) { return c[1] === file.print; })[0];
    var game = is ? is[0] : file.game || named(file.name);
    return file.not && file.not.has(game) ? '' : game;
  }
  function fileOf(game) {
    var own = files.filter(function (f) { return gameOf(f) === game; });
    return own.filter(function (f) { return f.print === confirmed.get(game); })[0] || own[0];
  }
  function choose(list) {
    files = Array.prototype.filter.call(list, function (f) { return !f.type || /^video\//.test(f.type) || /\.(mp4|m4v|mov|webm|mkv|ogv)$/i.test(f.name); })
      .map(function (f) { return { name: f.name, size: f.size, file: f }; });
    return Promise.all(files.map(print));
  }
  if (typeof SERVED !== 'undefined') {
    files = SERVED.files.map(function (f) { return { name: f.name, size: f.size, print: f.print, game: f.game, url: root() + f.url }; });
  }
  function root() { return document.querySelector('script[src$="book.js"]').src.replace(/book\.js$/, ''); }

  // ---- a player: page = { video, note, asked, chosen } ----
  function Player(page) {
    this.video = page.video;
    this.note = page.note;
    this.asked = page.asked;
    this.chosen = page.chosen;
    this.turn = 0; // a clip that was asked for later makes what is still being opened for an earlier one void
    this.end = NaN;
    var self = this;
    function check() { self.check(); }
    ['timeupdate', 'play', 'ratechange'].forEach(function (e) { self.video.addEventListener(e, check); });
    // Who looks elsewhere in the file has left the clip.
    this.video.addEventListener('seeking', function () {
      var t = self.video.currentTime;
      if (self.ours && Math.abs(t - self.ours) < 0.01) { self.ours = 0; }
      else if (t > self.end || t < self.start - 1) { self.end = NaN; }
    });
  }
  Player.prototype.say = function (t) { this.note.textContent = t; this.asked.textContent = ''; };
  // Stops at the end: asked at every picture, at the player's own ticks, and by the clock in between.
  Player.prototype.check = function () {
    var v = this.video;
    var self = this;
    clearTimeout(this.timer);
    if (isNaN(this.end)) { return; }
    var left = this.end - v.currentTime;
    if (left <= 0.02) {
      v.pause();
      this.end = NaN;
      this.over = true;
      v.dispatchEvent(new Event('clipend'));
      return;
    }
    if (v.paused || !(v.playbackRate > 0)) { return; }
    this.timer = setTimeout(function () { self.check(); }, Math.min(1000, Math.max(10, left / v.playbackRate * 1000)));
    if (v.requestVideoFrameCallback && !this.waiting) {
      this.waiting = true;
      v.requestVideoFrameCallback(function () { self.waiting = false; self.check(); });
    }
  };
  Player.prototype.stop = function () {
    this.turn++;
    this.end = NaN;
    clearTimeout(this.timer);
    this.video.onloadedmetadata = null;
    this.video.onerror = null;
    this.video.pause();
  };
  // Another game's video is never played for a clip: which file is needed is said, and where a file
  // has no game in its name, the viewer is asked.
  Player.prototype.refuse = function (clip) {
    var self = this;
    var unnamed = files.filter(function (f) { return gameOf(f) === ''; });
    if (files.length === 0) {
      this.say('Choose the video of ' + clip.game + ' first: it stays on this machine.');
    } else {
      this.say(unnamed.length > 0 ? 'This clip is of ' + clip.game + '. Which file is that game?'
        : 'This clip is of ' + clip.game + (files.length === 1 ? ', the open file of ' + gameOf(files[0])
          : ', the ' + files.length + ' open files of other games') + '. Choose the file that has "' + clip.game + '" in its name.');
    }
    unnamed.forEach(function (f) { self.offer(f.name, clip, f); });
    if (unnamed.length > 0) {
      this.asked.appendChild(make('span', 'If it is none of these, choose the file that has "' + clip.game + '" in its name.'));
      this.asked.firstChild.focus();
    } else if (this.chosen) { this.chosen.focus(); }
  };
  Player.prototype.offer = function (label, clip, file) {
    var self = this;
    var b = make('button', label, { type: 'button' });
    b.addEventListener('click', function () {
      if (file.not) { file.not.delete(clip.game); }
      confirm(clip.game, file);
      self.play(clip);
    });
    this.asked.appendChild(b);
  };
  // What the viewer sees is another game: the file is asked for anew.
  Player.prototype.wrong = function () {
    if (!this.clip || !this.playing) { return; }
    this.playing.not = (this.playing.not || new Set()).add(this.clip.game);
    if (confirmed.get(this.clip.game) === this.playing.print) {
      confirmed.delete(this.clip.game);
      KIT.remember('files-' + GAMES.key, JSON.stringify(Array.from(confirmed)));
    }
    this.play(this.clip);
  };
  Player.prototype.play = function (clip) {
    var self = this;
    var v = this.video;
    this.stop();
    this.over = false;
    this.clip = clip;
    var turn = this.turn;
    if (files.some(function (f) { return !f.print; })) {
      Promise.all(files.map(print)).then(function () { if (turn === self.turn) { self.play(clip); } });
      return;
    }
    var file = fileOf(clip.game);
    if (!file) { this.refuse(clip); return; }
    var before = confirmed.get(clip.game);
    if (before && before !== file.print) {
      this.say(file.name + ' is not the file from which clips of ' + clip.game + ' played before: it has another beginning or size. Is it that game too?');
      this.offer('Yes, play it from now on', clip, file);
      this.asked.firstChild.focus();
      return;
    }
    function go() {
      if (turn !== self.turn) { return; }
      var at = span(clip);
      var last = games.has(clip.game) ? games.get(clip.game).last : 0;
      if (at.start > v.duration) { self.say('The file ends before ' + KIT.stamp(at.start) + '.'); return; }
      if (!before && v.duration + SHORT < last) {
        self.say(file.name + ' lasts ' + KIT.stamp(v.duration) + ', but clips of ' + clip.game + ' go on to ' + KIT.stamp(last) + '. Is it that game?');
        self.offer('Yes, play what it has', clip, file);
        self.asked.firstChild.focus();
        return;
      }
      confirm(clip.game, file);
      self.ours = at.start;
      self.start = at.start;
      v.currentTime = at.start;
      self.end = Math.min(at.end, v.duration - 0.02);
      self.say(file.name + ', ' + KIT.stamp(at.start) + ' to ' + KIT.stamp(at.end) + (at.doubt ? ' (' + at.doubt + ')' : ''));
      var started = v.play();
      if (started) { started.catch(function () { /* the viewer presses play */ }); }
    }
    if (this.playing === file && v.readyState > 0 && !v.error) { go(); return; }
    this.playing = file;
    this.say('Opening ' + file.name + '.');
    if (this.url) { URL.revokeObjectURL(this.url); this.url = null; }
    v.onloadedmetadata = go;
    v.onerror = function () { self.say('The browser cannot play ' + file.name + '.'); };
    v.src = file.url || (this.url = URL.createObjectURL(file.file));
  };

  // ---- what all players of a page share ----
  function number(key, usual, before, after) {
    var box = make('label', before + ' ');
    var input = make('input', '', { type: 'number', min: '0', max: '120', step: '1', value: String(setting(key, usual)) });
    input.addEventListener('change', function () { KIT.remember(key, input.value); });
    input.addEventListener('input', function () { KIT.remember(key, input.value); });
    box.appendChild(input);
    box.appendChild(document.createTextNode(' ' + after));
    return box;
  }
  function settings() { return [number('lead', LEAD, 'Start', 's before'), number('after', AFTER, 'Stop', 's after')]; }
  function chooser(label, folder, chosen) {
    var box = make('label', label + ' ');
    var input = make('input', '', folder ? { type: 'file', webkitdirectory: '' } : { type: 'file', accept: 'video/*', multiple: '' });
    input.addEventListener('change', function () {
      choose(input.files).then(function () { chosen(files); });
    });
    box.appendChild(input);
    return { box: box, input: input };
  }

  // ---- the small player of every page but the meeting's ----
  var panel, player;
  function build() {
    if (document.querySelector('main[data-own]')) { return; }
    panel = make('section', '', { 'class': 'player', 'aria-label': 'Video', hidden: '' });
    var video = make('video', '', { controls: '', preload: 'metadata' });
    var note = make('p', '', { role: 'status' });
    var asked = make('div', '', { 'class': 'tools' });
    var row = make('div', '', { 'class': 'tools' });
    var pick = chooser('Game file', false, function (all) {
      player.say(all.length === 1 ? all[0].name : all.length + ' files');
      if (player.clip && !player.over && fileOf(player.clip.game)) { player.play(player.clip); }
    });
    if (typeof SERVED === 'undefined') { row.appendChild(pick.box); }
    settings().forEach(function (s) { row.appendChild(s); });
    var list = make('button', '', { type: 'button', 'class': 'list', hidden: '' });
    list.addEventListener('click', function () { LIST.toggle(player.clip); });
    LIST.watch(function () {
      if (player && player.clip) { list.hidden = false; list.textContent = LIST.has(player.clip) ? 'Take off the meeting list' : 'On the meeting list'; }
    });
    var wrong = make('button', 'Wrong game', { type: 'button' });
    wrong.addEventListener('click', function () { player.wrong(); });
    row.appendChild(wrong);
    var close = make('button', 'Close', { type: 'button' });
    close.addEventListener('click', function () { player.stop(); panel.hidden = true; });
    row.appendChild(list);
    row.appendChild(close);
    [row, video, note, asked].forEach(function (e) { panel.appendChild(e); });
    document.body.appendChild(panel);
    player = new Player({ video: video, note: note, asked: asked, chosen: typeof SERVED === 'undefined' ? pick.input : null });
  }
  return {
    panel: build,
    open: function () { panel.hidden = false; if (player.chosen) { player.chosen.focus(); } },
    jump: function (clip) { panel.hidden = false; player.play(clip); LIST.tell(); },
    say: function (t) { if (player) { player.say(t); panel.hidden = false; } },
    span: span,
    nameOf: function (game) { var f = fileOf(game); return f ? f.name : game + '.mp4'; },
    player: function (page) { return new Player(page); },
    settings: settings,
    chooser: chooser,
    missing: function (names) { return names.filter(function (g) { return !fileOf(g); }); },
    files: function () { return files; }
  };
})();
