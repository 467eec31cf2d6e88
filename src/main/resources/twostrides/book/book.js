// Working habits of a page: filter, sort and clip lists for its tables, units, light and dark, and a
// local video that jumps to a row. Text from sheets is only ever set as text. Nothing is fetched and
// nothing leaves the page; what is shown stands in the part of the address after #.
var BOOK = (function () {
  'use strict';
  var LEAD = 4; // seconds before the row's second; assumed, can be changed on the page
  var CLIP = 12; // seconds of a clip after that; assumed
  var FEWEST = 4; // rows from which a table can be filtered and sorted
  var AT_ONCE = 3; // lists that a phone shows beside the table; assumed

  function make(tag, words, attributes) {
    var e = document.createElement(tag);
    if (words) { e.textContent = words; }
    Object.keys(attributes || {}).forEach(function (k) { e.setAttribute(k, attributes[k]); });
    return e;
  }
  function words(cell) { return cell ? cell.textContent.trim() : ''; }

  // ---- the address: #u=ft&theme=dark&f0-cause=icing&s0=3d ----
  function state() {
    var hash = location.hash.slice(1);
    return new URLSearchParams(hash.indexOf('=') < 0 ? '' : hash);
  }
  function keep(key, value) {
    var s = state();
    if (value) { s.set(key, value); } else { s.delete(key); }
    var text = s.toString();
    history.replaceState(null, '', text ? '#' + text : location.pathname + location.search);
  }
  function remembered(key) {
    try { return localStorage.getItem('two-strides-' + key) || ''; } catch (e) { return ''; }
  }
  function remember(key, value) {
    try { localStorage.setItem('two-strides-' + key, value); } catch (e) { /* the page works without */ }
  }

  // ---- units and theme ----
  var LENGTH = /(\d+(?:\.\d+)?) m \((\d+) ft\)/g;
  var lengths = [];
  function collect() {
    var walker = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
    var node;
    while ((node = walker.nextNode())) {
      if (node.data.search(LENGTH) >= 0) { lengths.push([node, node.data]); }
    }
  }
  function units(u) {
    lengths.forEach(function (l) {
      l[0].data = u === 'm' ? l[1].replace(LENGTH, '$1 m')
        : u === 'ft' ? l[1].replace(LENGTH, '$2 ft') : l[1];
    });
  }
  function theme(t) {
    if (t) { document.documentElement.setAttribute('data-theme', t); }
    else { document.documentElement.removeAttribute('data-theme'); }
  }
  function choice(label, key, options, apply) {
    var box = make('label', label + ' ');
    var select = make('select', '', {});
    options.forEach(function (o) { select.appendChild(make('option', o[1], { value: o[0] })); });
    select.addEventListener('change', function () {
      keep(key, select.value);
      remember(key, select.value);
      apply(select.value);
    });
    box.appendChild(select);
    return { box: box, show: function () {
      var s = state();
      var v = s.has(key) ? s.get(key) : remembered(key);
      if (!options.some(function (o) { return o[0] === v; })) { v = ''; }
      select.value = v;
      apply(v);
    } };
  }

  // ---- tables ----
  function seconds(text) {
    var m = /^(\d+):(\d\d):(\d\d)$/.exec(text);
    return m ? +m[1] * 3600 + +m[2] * 60 + +m[3] : NaN;
  }
  function key(text) {
    var clock = /^P(\d+) (\d+):(\d\d)$/.exec(text);
    if (clock) { return +clock[1] * 100000 - (+clock[2] * 60 + +clock[3]); }
    var video = seconds(text);
    if (!isNaN(video)) { return video; }
    var m = /^(?:under |over )?([+-]?\d+(?:\.\d+)?)/.exec(text);
    return m ? parseFloat(m[1]) : NaN;
  }
  function columnOf(table, label) {
    var heads = Array.prototype.slice.call(table.tHead.rows[0].cells);
    for (var i = 0; i < heads.length; i++) {
      if ((heads[i].getAttribute('data-label') || words(heads[i])) === label) { return i; }
    }
    return -1;
  }

  function Sheet(table, number) {
    this.table = table;
    this.number = number;
    this.body = table.tBodies[0];
    var rows = Array.prototype.slice.call(this.body.rows);
    this.fixed = rows.filter(function (r) { return /\b(sum|zero)\b/.test(r.className); });
    this.rows = rows.filter(function (r) { return !/\b(sum|zero)\b/.test(r.className); });
  }
  Sheet.prototype.build = function () {
    var self = this;
    var region = this.table.parentNode;
    var bar = make('div', '', { 'class': 'tools', role: 'group', 'aria-label': 'Rows of ' + region.getAttribute('aria-label') });
    this.picks = PICKS.of(this.table, this.rows, this.number, { make: make, state: state, keep: keep }, function () { self.filter(); });
    var controls = this.picks.controls;
    var box = make('div', '', { 'class': 'picks', id: 'picks' + this.number });
    controls.forEach(function (c) { box.appendChild(c.box); });
    // On a phone so many lists would hide the table: they wait behind a button, which wide pages hide.
    this.open = make('button', 'Pick rows', { type: 'button', 'class': 'open', 'aria-expanded': 'true', 'aria-controls': box.id });
    this.open.addEventListener('click', function () { self.expand(self.open.getAttribute('aria-expanded') === 'false'); });
    if (controls.length > AT_ONCE) { bar.appendChild(this.open); }
    bar.appendChild(box);
    this.all = make('button', 'Show all rows', { type: 'button', hidden: '' });
    this.all.addEventListener('click', function () {
      self.picks.clear();
      self.focus();
    });
    bar.appendChild(this.all);
    this.count = make('span', '', { 'class': 'count', role: 'status' });
    bar.appendChild(this.count);
    if (columnOf(this.table, 'Video') >= 0) {
      bar.appendChild(make('span', 'Clips of these rows: '));
      ['csv', 'vtt', 'xspf'].forEach(function (form) {
        var b = make('button', form.toUpperCase(), { type: 'button', 'data-clips': form });
        b.addEventListener('click', function () { clips(self, form); });
        bar.appendChild(b);
      });
    }
    if (controls.length > 0 || bar.children.length > 3) { region.parentNode.insertBefore(bar, region); }
    Array.prototype.forEach.call(this.table.tHead.rows[0].cells, function (th, i) {
      var name = words(th);
      th.setAttribute('data-label', name);
      var b = make('button', '', { type: 'button', 'class': 'sort', 'aria-label': 'Sort by ' + name });
      b.addEventListener('click', function () {
        var now = state().get('s' + self.number);
        keep('s' + self.number, now === i + 'u' ? i + 'd' : now === i + 'd' ? '' : i + 'u');
        self.sort();
      });
      th.appendChild(b);
    });
    this.show();
  };
  Sheet.prototype.expand = function (open) { this.open.setAttribute('aria-expanded', String(open)); };
  Sheet.prototype.focus = function () {
    this.expand(true);
    unfold(this.table);
    this.picks.controls[0].input.focus();
  };
  Sheet.prototype.show = function () {
    this.picks.show();
    if (this.picks.any()) {
      unfold(this.table);
      this.table.parentNode.scrollIntoView({ block: 'nearest' });
    }
    this.expand(this.picks.controls.length <= AT_ONCE || this.picks.any());
    this.sort();
    this.filter();
  };
  Sheet.prototype.filter = function () {
    var picks = this.picks;
    var any = picks.any();
    var shown = 0;
    this.rows.forEach(function (r) {
      r.hidden = !picks.fits(r);
      shown += r.hidden ? 0 : 1;
    });
    // A sum is of all rows; beside a part of them it would mislead.
    this.fixed.forEach(function (r) { r.hidden = any; });
    this.all.hidden = !any;
    this.count.textContent = any ? shown + ' of ' + this.rows.length + ' rows' : '';
  };
  Sheet.prototype.sort = function () {
    var m = /^(\d+)([ud])$/.exec(state().get('s' + this.number) || '');
    var heads = this.table.tHead.rows[0].cells;
    var rows = this.rows.slice();
    if (m && +m[1] < heads.length) {
      var at = +m[1];
      var up = m[2] === 'u' ? 1 : -1;
      var number = rows.every(function (r) {
        var t = words(r.cells[at]);
        return !isNaN(key(t)) || /^(|–|none|too few to say.*|not reached)$/.test(t);
      });
      var keyed = rows.map(function (r, i) {
        var t = words(r.cells[at]);
        return { row: r, i: i, k: number ? key(t) : t.toLowerCase(), empty: t === '' || t === '–' };
      });
      keyed.sort(function (a, b) {
        var ea = number ? isNaN(a.k) : a.empty;
        var eb = number ? isNaN(b.k) : b.empty;
        // Rows that cannot say stand last, whichever way it is sorted.
        if (ea || eb) { return ea === eb ? a.i - b.i : ea ? 1 : -1; }
        return a.k < b.k ? -up : a.k > b.k ? up : a.i - b.i;
      });
      rows = keyed.map(function (k) { return k.row; });
    }
    Array.prototype.forEach.call(heads, function (th, i) {
      var on = m && +m[1] === i;
      if (on) { th.setAttribute('aria-sort', m[2] === 'u' ? 'ascending' : 'descending'); }
      else { th.removeAttribute('aria-sort'); }
    });
    var body = this.body;
    rows.concat(this.fixed).forEach(function (r) { body.appendChild(r); });
  };

  // ---- clips ----
  function clipRows(sheet) {
    var table = sheet.table;
    var video = columnOf(table, 'Video');
    var game = columnOf(table, 'Game');
    return Array.prototype.slice.call(sheet.body.rows)
      .filter(function (r) { return !r.hidden && !isNaN(seconds(words(r.cells[video]))); })
      .map(function (r) {
        var at = seconds(words(r.cells[video]));
        var title = Array.prototype.slice.call(r.cells)
          .filter(function (c, i) { return i !== video && i !== game; })
          .map(words).filter(function (t) { return t && t !== '–'; }).slice(0, 4).join(', ');
        return { game: words(r.cells[game]), start: Math.max(0, at - lead()), end: at + CLIP, title: title };
      });
  }
  function stamp(s) {
    var whole = Math.floor(s);
    function two(n) { return (n < 10 ? '0' : '') + n; }
    return two(Math.floor(whole / 3600)) + ':' + two(Math.floor(whole / 60) % 60) + ':' + two(whole % 60) + '.000';
  }
  function csvCell(t) {
    // As CsvOut.RUNS: what a spreadsheet would run, behind a semicolon too.
    var safe = t.replace(/(^|[;\t\r\n])(?=[ \u00a0"]*[=+\-@\uff1d\uff0b\uff0d\uff20])(?! *[+-]\d+([.,]\d+)? *([;\t\r\n]|$))/g, "$1'");
    return /[",\n\r]/.test(safe) ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  }
  function cue(t) {
    return t.replace(/\s+/g, ' ').replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
  }
  function xml(t) {
    return t.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\uD800-\uDFFF]/g, ' ')
      .replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
  }
  function clips(sheet, form) {
    var list = clipRows(sheet);
    if (list.length === 0) { say('None of these rows has a video second.'); return; }
    if (form === 'csv') {
      save('clips.csv', 'text/csv', 'game,start_s,end_s,title\r\n' + list.map(function (c) {
        return [c.game, String(c.start), String(c.end), c.title].map(csvCell).join(',');
      }).join('\r\n') + '\r\n');
    } else if (form === 'vtt') {
      // Chapters belong to one video, so each game gets a file of its own.
      var games = new Map();
      list.forEach(function (c) { games.set(c.game, (games.get(c.game) || []).concat(c)); });
      games.forEach(function (own, g) {
        save('clips-' + plain(g) + '.vtt', 'text/vtt', 'WEBVTT\n\n' + own
          .sort(function (a, b) { return a.start - b.start; })
          .map(function (c, i, all) {
            // Chapters may not overlap in part, so one ends where the next begins.
            var next = all.slice(i + 1).filter(function (l) { return l.start > c.start; })[0];
            var end = next ? Math.min(c.end, next.start) : c.end;
            return stamp(c.start) + ' --> ' + stamp(end) + '\n' + cue(c.title) + '\n';
          }).join('\n'));
      });
    } else {
      save('clips.xspf', 'application/xspf+xml', '<?xml version="1.0" encoding="UTF-8"?>\n'
        + '<playlist version="1" xmlns="http://xspf.org/ns/0/">\n<trackList>\n' + list.map(function (c) {
          var file = fileOf(c.game);
          return '<track>' + (file ? '<location>' + xml(encodeURIComponent(file.name)) + '#t=' + c.start + ',' + c.end + '</location>' : '')
            + '<title>' + xml(c.title) + '</title><album>' + xml(c.game) + '</album></track>';
        }).join('\n') + '\n</trackList>\n</playlist>\n');
    }
  }
  function plain(t) {
    return t.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 40) || 'game';
  }
  function save(name, type, text) {
    var url = URL.createObjectURL(new Blob([text], { type: type }));
    var a = make('a', '', { href: url, download: name });
    document.body.appendChild(a);
    a.click();
    a.remove();
    setTimeout(function () { URL.revokeObjectURL(url); }, 1000);
  }

  // ---- video: files stay on this machine, the page only plays them ----
  var files = [];
  var games = new Set(); // games of this page that have clips
  var told = new Map(); // name of a file, and the game that the viewer says it is
  var panel, video, note, asked, leadInput, chosen, playing, url;
  function lead() {
    var v = leadInput ? parseFloat(leadInput.value) : LEAD;
    return isNaN(v) || v < 0 ? LEAD : v;
  }
  function say(t) { note.textContent = t; asked.textContent = ''; panel.hidden = false; }
  // A file is of the game whose id stands in its name, word by word; of two the longer one.
  function gameOf(file) {
    if (told.has(file.name)) { return told.get(file.name); }
    function line(t) { return ' ' + PICKS.tokens(t).join(' ') + ' '; }
    var name = line(file.name.replace(/\.[^.]*$/, ''));
    var found = Array.from(games).filter(function (g) { return line(g).length > 2 && name.indexOf(line(g)) >= 0; });
    var longest = Math.max.apply(null, found.map(function (g) { return line(g).length; }));
    found = found.filter(function (g) { return line(g).length === longest; });
    return found.length === 1 ? found[0] : '';
  }
  function fileOf(game) {
    return files.filter(function (f) { return gameOf(f) === game; })[0];
  }
  // Another game's video is never played for a clip: which file is needed is said, and where a file
  // has no game in its name, the viewer is asked.
  function refuse(game, at) {
    // Nor does a file begin that was still being opened for an earlier clip.
    video.onloadedmetadata = null;
    video.onerror = null;
    video.pause();
    var unnamed = files.filter(function (f) { return gameOf(f) === ''; });
    say(unnamed.length > 0 ? 'This clip is of ' + game + '. Which file is that game?'
      : 'This clip is of ' + game + (files.length === 1 ? ', the open file of ' + gameOf(files[0])
        : ', the ' + files.length + ' open files of other games') + '. Choose the file that has "' + game + '" in its name.');
    unnamed.forEach(function (f) {
      var b = make('button', f.name, { type: 'button' });
      b.addEventListener('click', function () { told.set(f.name, game); jump(game, at); });
      asked.appendChild(b);
    });
    if (unnamed.length > 0) {
      asked.appendChild(make('span', 'If it is none of these, choose the file that has "' + game + '" in its name.'));
      asked.firstChild.focus();
    } else { chosen.focus(); }
  }
  function jump(game, at) {
    panel.hidden = false;
    if (files.length === 0) {
      say('Choose the video of ' + game + ' first: it stays on this machine.');
      chosen.focus();
      return;
    }
    var file = fileOf(game);
    if (!file) { refuse(game, at); return; }
    var to = Math.max(0, at - lead());
    function go() {
      if (to > video.duration) { say('The file ends before ' + stamp(to).slice(0, 8) + '.'); return; }
      video.currentTime = to;
      say(file.name + ', from ' + stamp(to).slice(0, 8));
      var started = video.play();
      if (started) { started.catch(function () { /* the viewer presses play */ }); }
    }
    if (playing === file && video.readyState > 0) { go(); return; }
    playing = file;
    say('Opening ' + file.name + '.');
    if (url) { URL.revokeObjectURL(url); }
    url = URL.createObjectURL(file);
    video.onloadedmetadata = go;
    video.onerror = function () { say('The browser cannot play ' + file.name + '.'); };
    video.src = url;
  }
  function videoPanel() {
    panel = make('section', '', { 'class': 'player', 'aria-label': 'Video', hidden: '' });
    video = make('video', '', { controls: '', preload: 'metadata' });
    note = make('p', '', { role: 'status' });
    asked = make('div', '', { 'class': 'tools' });
    var row = make('div', '', { 'class': 'tools' });
    var pick = make('label', 'Game file ');
    chosen = make('input', '', { type: 'file', accept: 'video/*', multiple: '' });
    chosen.addEventListener('change', function () {
      files = Array.prototype.slice.call(chosen.files);
      told.clear();
      say(files.length === 1 ? files[0].name : files.length + ' files');
    });
    pick.appendChild(chosen);
    var ahead = make('label', 'Start ');
    leadInput = make('input', '', { type: 'number', min: '0', max: '60', step: '1', value: String(LEAD) });
    ahead.appendChild(leadInput);
    ahead.appendChild(document.createTextNode(' s before'));
    var close = make('button', 'Close', { type: 'button' });
    close.addEventListener('click', function () { video.pause(); panel.hidden = true; });
    [pick, ahead, close].forEach(function (e) { row.appendChild(e); });
    [row, video, note, asked].forEach(function (e) { panel.appendChild(e); });
    document.querySelector('.sheet').appendChild(panel);
  }
  function link(cell, game) {
    var at = seconds(words(cell));
    if (isNaN(at)) { return false; }
    games.add(game);
    var b = make('button', words(cell), { type: 'button', 'class': 'at', 'aria-label': 'Play the video from ' + words(cell) });
    b.addEventListener('click', function () { jump(game, at); });
    cell.textContent = '';
    cell.appendChild(b);
    return true;
  }
  function videoLinks() {
    var any = false;
    Array.prototype.forEach.call(document.querySelectorAll('main table'), function (t) {
      var at = columnOf(t, 'Video');
      var game = columnOf(t, 'Game');
      if (at < 0 || game < 0) { return; }
      Array.prototype.forEach.call(t.tBodies[0].rows, function (r) {
        if (r.cells.length > at) { any = link(r.cells[at], words(r.cells[game])) || any; }
      });
    });
    Array.prototype.forEach.call(document.querySelectorAll('main dl'), function (dl) {
      Array.prototype.forEach.call(dl.querySelectorAll('dt'), function (dt) {
        if (words(dt) === 'Video') { any = link(dt.nextElementSibling, dl.getAttribute('data-game') || words(dl.parentNode.querySelector('i'))) || any; }
      });
    });
    return any;
  }

  // ---- marks of pictures: each leads to its clip, #clip=game&at=second ----
  function marks() {
    var all = document.querySelectorAll('a[href^="#clip="], a[*|href^="#clip="]');
    Array.prototype.forEach.call(all, function (a) {
      var s = new URLSearchParams((a.getAttribute('href') || a.getAttributeNS('http://www.w3.org/1999/xlink', 'href')).slice(1));
      games.add(s.get('clip'));
      a.addEventListener('click', function (e) {
        e.preventDefault();
        jump(s.get('clip'), parseFloat(s.get('at')));
      });
    });
    return all.length > 0;
  }

  // What the address asks for is never left in a fold.
  function unfold(e) {
    for (var p = e; p; p = p.parentElement) { if (p.tagName === 'DETAILS') { p.open = true; } }
  }

  // ---- players' sheets: all of them, or the one that the address names ----
  function playerChoice() {
    var cards = Array.prototype.slice.call(document.querySelectorAll('.one'));
    if (cards.length === 0) { return null; }
    var box = make('label', 'Sheets ');
    var select = make('select', '', {});
    select.appendChild(make('option', 'all ' + cards.length, { value: '' }));
    cards.forEach(function (c) {
      select.appendChild(make('option', words(c.querySelector('h2')), { value: c.id.split('=')[1] }));
    });
    select.addEventListener('change', function () { keep('player', select.value); show(); });
    box.appendChild(select);
    function show() {
      var v = state().get('player') || '';
      var known = cards.some(function (c) { return c.id === 'player=' + v; });
      select.value = known ? v : '';
      cards.forEach(function (c) { c.hidden = known && c.id !== 'player=' + v; });
    }
    return { box: box, show: show };
  }

  // ---- start ----
  Array.prototype.forEach.call(document.querySelectorAll('a[href*="numbers.html#"]'), function (a) {
    a.title = MEANINGS[a.getAttribute('href').split('#')[1]] || '';
  });
  collect();
  videoPanel();
  var bar = make('div', '', { 'class': 'tools page-tools', role: 'region', 'aria-label': 'How this page is shown' });
  var choices = [
    choice('Lengths', 'u', [['', 'm and ft'], ['m', 'm'], ['ft', 'ft']], units),
    choice('Colours', 'theme', [['', 'as the machine'], ['light', 'light'], ['dark', 'dark']], theme)
  ];
  var players = playerChoice();
  if (players) {
    choices.unshift(players);
    var print = make('button', 'Print', { type: 'button' });
    print.addEventListener('click', function () { window.print(); });
    bar.appendChild(print);
  }
  choices.forEach(function (c) { bar.insertBefore(c.box, print || null); });
  var anyRow = videoLinks();
  if (marks() || anyRow) {
    var open = make('button', 'Open a game file', { type: 'button' });
    open.addEventListener('click', function () { panel.hidden = false; chosen.focus(); });
    bar.appendChild(open);
  }
  var nav = document.querySelector('nav.pages');
  nav.parentNode.insertBefore(bar, nav.nextSibling);
  var sheets = [];
  Array.prototype.forEach.call(document.querySelectorAll(':not(.two) > .scroll > table'), function (t) {
    // A table with a script of its own is written anew when the reader picks something else.
    if (!t.hasAttribute('data-own') && t.tBodies[0].rows.length >= FEWEST) {
      var s = new Sheet(t, sheets.length);
      sheets.push(s);
      s.build();
    }
  });
  choices.forEach(function (c) { c.show(); });
  function target() {
    var e = location.hash.indexOf('=') < 0 && document.getElementById(location.hash.slice(1));
    if (e) {
      unfold(e);
      e.scrollIntoView();
    }
  }
  target();
  window.addEventListener('beforeprint', function () {
    // Paper has no folds: flags print whole, what is to be looked at as a line, long tables stay away.
    Array.prototype.forEach.call(document.querySelectorAll('details.flag:not(.look):not(.near)'), function (d) { d.open = true; });
  });
  window.addEventListener('hashchange', function () {
    target();
    choices.forEach(function (c) { c.show(); });
    sheets.forEach(function (s) { s.show(); });
  });
  document.addEventListener('keydown', function (e) {
    var typing = /^(INPUT|SELECT|TEXTAREA)$/.test(e.target.tagName);
    var first = sheets.filter(function (s) { return s.picks.controls.length > 0; })[0];
    if (e.key === '/' && !typing && first) {
      e.preventDefault();
      first.focus();
    } else if (e.key === 'Escape' && e.target.type === 'search') {
      e.target.value = '';
      e.target.dispatchEvent(new Event('input'));
    }
  });
  return { make: make, state: state, keep: keep }; // for a page's own script
})();
