// Working habits of a page: filter, sort and clip lists for its tables, units, light and dark, and
// what its seconds of video lead to. Text from sheets is only ever set as text. Nothing is fetched and
// nothing leaves the page; what is shown stands in the part of the address after #.
var BOOK = (function () {
  'use strict';
  var FEWEST = 4; // rows from which a table can be filtered and sorted
  var AT_ONCE = 3; // lists that a phone shows beside the table; assumed

  var make = KIT.make;
  var words = KIT.words;
  var seconds = KIT.seconds;
  var remembered = KIT.remembered;
  var remember = KIT.remember;

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
  var unit = '';
  var told = []; // who writes lengths later, and wants to know of another unit
  function inUnits(text) {
    return unit === 'm' ? text.replace(LENGTH, '$1 m') : unit === 'ft' ? text.replace(LENGTH, '$2 ft') : text;
  }
  function units(u) {
    unit = u;
    lengths.forEach(function (l) { l[0].data = inUnits(l[1]); });
    told.forEach(function (t) { t(); });
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
      ['csv', 'vtt', 'xspf', 'm3u'].forEach(function (form) {
        var b = make('button', form.toUpperCase(), { type: 'button', 'data-clips': form });
        b.addEventListener('click', function () { CLIPLISTS.save(clipRows(self), form); });
        bar.appendChild(b);
      });
      var meet = make('button', 'On the meeting list', { type: 'button' });
      meet.addEventListener('click', function () { LIST.add(clipRows(self)); });
      bar.appendChild(meet);
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
      .map(function (r) { return rowClip(table, r, video, game); });
  }
  function rowClip(table, r, video, game) {
    var title = Array.prototype.slice.call(r.cells)
      .filter(function (c, i) { return i !== video && i !== game; })
      .map(words).filter(function (t) { return t && t !== '–'; }).slice(0, 4).join(', ');
    var source = columnOf(table, 'Sheet');
    return { game: words(r.cells[game]), at: seconds(words(r.cells[video])), title: title, source: source < 0 ? '' : words(r.cells[source]) };
  }

  // ---- video: a click on a row's second or on a mark plays its clip ----
  function link(cell, clip) {
    if (isNaN(clip.at)) { return false; }
    var text = words(cell);
    var b = make('button', text, { type: 'button', 'class': 'at', 'aria-label': 'Play the video from ' + text });
    b.addEventListener('click', function () { VIDEO.jump(clip); });
    cell.textContent = '';
    cell.appendChild(b);
    cell.appendChild(LIST.button(clip));
    return true;
  }
  function videoLinks() {
    var any = false;
    Array.prototype.forEach.call(document.querySelectorAll('main table:not([data-own])'), function (t) {
      var at = columnOf(t, 'Video');
      var game = columnOf(t, 'Game');
      if (at < 0 || game < 0) { return; }
      Array.prototype.forEach.call(t.tBodies[0].rows, function (r) {
        if (r.cells.length > at) { any = link(r.cells[at], rowClip(t, r, at, game)) || any; }
      });
    });
    Array.prototype.forEach.call(document.querySelectorAll('main dl'), function (dl) {
      var said = {};
      Array.prototype.forEach.call(dl.querySelectorAll('dt'), function (dt) { said[words(dt)] = dt.nextElementSibling; });
      if (!said.Video) { return; }
      var card = dl.closest('li, details.flag');
      var heading = card && card.querySelector('h3');
      var title = heading ? words(heading) : card ? Array.prototype.filter.call(card.childNodes, function (n) { return n.nodeType === 3; })
        .map(function (n) { return n.data; }).join(' ').replace(/^[,\s]+|\s+$/g, '') : '';
      any = link(said.Video, { game: dl.getAttribute('data-game') || words(dl.parentNode.querySelector('i')),
        at: seconds(words(said.Video)), title: title, source: words(said.Sheet) }) || any;
    });
    return any;
  }

  // ---- marks of pictures: each leads to its clip, #clip=game&at=second ----
  function marks() {
    var all = document.querySelectorAll('a[href^="#clip="], a[*|href^="#clip="]');
    Array.prototype.forEach.call(all, function (a) {
      var s = new URLSearchParams((a.getAttribute('href') || a.getAttributeNS('http://www.w3.org/1999/xlink', 'href')).slice(1));
      a.addEventListener('click', function (e) {
        e.preventDefault();
        VIDEO.jump({ game: s.get('clip'), at: parseFloat(s.get('at')), title: words(a.querySelector('title')), source: '' });
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
  VIDEO.panel();
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
  if ((marks() || anyRow) && typeof SERVED === 'undefined') {
    var open = make('button', 'Open a game file', { type: 'button' });
    open.addEventListener('click', VIDEO.open);
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
  return { make: make, state: state, keep: keep, inUnits: inUnits, onUnits: function (t) { told.push(t); } }; // for a page's own script
})();
