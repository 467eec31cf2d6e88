// Working habits of a page: filter, sort and clip lists for its tables, units, light and dark, and
// what its seconds of video lead to. Text from sheets is only ever set as text. Nothing is fetched and
// nothing leaves the page; what is shown stands in the part of the address after #.
var BOOK = (function () {
  'use strict';
  var FEWEST = 4; // rows from which a table can be filtered and sorted
  var AT_ONCE = 3; // lists that a phone shows beside the table; assumed
  var FIRST = 200; // rows that are shown before the rest is asked for; assumed

  var make = KIT.make;
  var words = KIT.words;
  var seconds = KIT.seconds;
  var remembered = KIT.remembered;
  var remember = KIT.remember;

  function each(selector, act, within) { Array.prototype.forEach.call((within || document).querySelectorAll(selector), act); }

  // ---- the address: #u=ft&theme=dark&f0-cause=icing&s0=3d; in a book of one file the page stands before it, #kill.html:s0=3d ----
  function address() {
    var m = /^#([a-z0-9\/-]+\.html)(?::(.*))?$/.exec(location.hash);
    return m ? { page: m[1], rest: m[2] || '' } : { page: '', rest: location.hash.slice(1) };
  }
  function state() {
    var rest = address().rest;
    return new URLSearchParams(rest.indexOf('=') < 0 ? '' : rest);
  }
  function keep(key, value) {
    var s = state();
    if (value) { s.set(key, value); } else { s.delete(key); }
    var text = [address().page, s.toString()].filter(Boolean).join(':');
    history.replaceState(null, '', text ? '#' + text : location.pathname + location.search);
  }
  // ---- units and theme ----
  var LENGTH = /(\d+(?:\.\d+)?)\sm\s\((\d+)\sft\)/g;
  var lengths = [];
  function collect(page) {
    var walker = document.createTreeWalker(page, NodeFilter.SHOW_TEXT);
    var node;
    while ((node = walker.nextNode())) {
      var tied = tie(node.data);
      if (tied !== node.data && !node.parentNode.closest('svg, script')) { node.data = tied; }
      if (node.data.search(LENGTH) >= 0) { lengths.push([node, node.data]); }
    }
  }
  // No line ends between a number and its unit.
  function tie(text) { return text.replace(/(\d) (?=(?:%|m|ft|s)(?!\w))/g, '$1\u00a0'); }
  var unit = '';
  var told = []; // who writes lengths later, and wants to know of another unit
  function inUnits(text) {
    return unit === 'm' ? text.replace(LENGTH, '$1\u00a0m') : unit === 'ft' ? text.replace(LENGTH, '$2\u00a0ft') : text;
  }
  function units(u) {
    unit = u;
    lengths.forEach(function (l) { l[0].data = inUnits(l[1]); });
    told.forEach(function (t) { t(); });
  }
  function look(attribute) {
    return function (value) {
      if (value) { document.documentElement.setAttribute(attribute, value); }
      else { document.documentElement.removeAttribute(attribute); }
    };
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
    var m = /^(?:under |over )?([+-]?\d+(?:\.\d+)?)/.exec(text.replace(/(\d),(?=\d{3})/g, '$1'));
    return m ? parseFloat(m[1]) : NaN;
  }
  function columnOf(table, label) {
    var heads = Array.prototype.slice.call(table.tHead.rows[0].cells);
    for (var i = 0; i < heads.length; i++) {
      if ((heads[i].getAttribute('data-label') || words(heads[i])) === label) { return i; }
    }
    return -1;
  }

  function Sheet(table, number, page) {
    this.table = table;
    this.prefix = page.id && page.id + ':'; // of ids, which one file may not have twice
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
    this.bar = bar;
    this.picks = PICKS.of(this.table, this.rows, this.number, { make: make, state: state, keep: keep, prefix: this.prefix }, function () { self.filter(); });
    var controls = this.picks.controls;
    var box = make('div', '', { 'class': 'picks', id: this.prefix + 'picks' + this.number });
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
      var meet = make('button', 'On the meeting list', { type: 'button', 'class': 'list' });
      meet.addEventListener('click', function () { LIST.add(clipRows(self)); });
      bar.appendChild(meet);
    }
    if (controls.length > 0 || bar.children.length > 3) { region.parentNode.insertBefore(bar, region); }
    this.rest = make('button', '', { type: 'button', 'class': 'rest', hidden: '' });
    this.rest.addEventListener('click', function () {
      self.whole = true;
      self.limit();
    });
    region.appendChild(this.rest);
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
      // What is picked stands above the rows.
      this.bar.scrollIntoView({ block: 'start' });
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
    this.limit();
  };
  // A season's list is long: the first rows are there at once, the others when they are asked for, and on paper.
  Sheet.prototype.limit = function () {
    var left = this.whole ? Infinity : FIRST;
    var later = 0;
    Array.prototype.forEach.call(this.body.rows, function (r) {
      var waits = !r.hidden && left-- <= 0;
      later += waits ? 1 : 0;
      r.classList.toggle('later', waits);
    });
    this.rest.hidden = later === 0;
    this.rest.textContent = 'Show ' + later + ' more rows';
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
    // Rows stand in the order of play until they are sorted for the first time.
    if (m || this.sorted) {
      var body = this.body;
      rows.concat(this.fixed).forEach(function (r) { body.appendChild(r); });
      this.limit();
    }
    this.sorted = Boolean(m);
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
  function videoLinks(page) {
    var any = false;
    each('main table:not([data-own])', function (t) {
      var at = columnOf(t, 'Video');
      var game = columnOf(t, 'Game');
      if (at < 0 || game < 0) { return; }
      Array.prototype.forEach.call(t.tBodies[0].rows, function (r) {
        if (r.cells.length > at) { any = link(r.cells[at], rowClip(t, r, at, game)) || any; }
      });
    }, page);
    each('main dl', function (dl) {
      var said = {};
      each('dt', function (dt) { said[words(dt)] = dt.nextElementSibling; }, dl);
      if (!said.Video) { return; }
      var card = dl.closest('li, details.flag');
      var heading = card && card.querySelector('h3');
      var title = heading ? words(heading) : card ? Array.prototype.filter.call(card.childNodes, function (n) { return n.nodeType === 3; })
        .map(function (n) { return n.data; }).join(' ').replace(/^[,\s]+|\s+$/g, '') : '';
      any = link(said.Video, { game: dl.getAttribute('data-game') || words(dl.parentNode.querySelector('i')),
        at: seconds(words(said.Video)), title: title, source: words(said.Sheet) }) || any;
    }, page);
    return any;
  }

  // ---- marks of pictures: each leads to its clip, #clip=game&at=second ----
  function marks(page) {
    var all = 'a[href^="#clip="]';
    each(all, function (a) {
      var s = new URLSearchParams(a.getAttribute('href').slice(1));
      a.addEventListener('click', function (e) {
        e.preventDefault();
        VIDEO.jump({ game: s.get('clip'), at: parseFloat(s.get('at')), title: words(a.querySelector('title')), source: '' });
      });
    }, page);
    return page.querySelector(all) !== null;
  }

  // What the address asks for is never left in a fold.
  function unfold(e) {
    for (var p = e; p; p = p.parentElement) { if (p.tagName === 'DETAILS') { p.open = true; } }
  }

  // ---- players' sheets: all of them, or the one that the address names ----
  function playerChoice(page) {
    var cards = Array.prototype.slice.call(page.querySelectorAll('.one'));
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
      function is(c) { return c.id.split('=')[1] === v; }
      var known = cards.some(is);
      select.value = known ? v : '';
      cards.forEach(function (c) { c.hidden = known && !is(c); });
    }
    return { box: box, show: show };
  }

  // ---- start ----
  function start(page) {
    each('a[href*="numbers.html"]', function (a) {
      a.title = MEANINGS[a.getAttribute('href').split(/html[#:]/)[1]] || '';
    }, page);
    collect(page);
    var bar = make('div', '', { 'class': 'tools page-tools', role: 'region', 'aria-label': 'How this page is shown' });
    var choices = [
      choice('Lengths', 'u', [['', 'm and ft'], ['m', 'm'], ['ft', 'ft']], units),
      choice('Colours', 'theme', [['', 'as the machine'], ['light', 'light'], ['dark', 'dark']], look('data-theme'))
    ];
    var players = playerChoice(page);
    if (players) { choices.unshift(players, choice('Letters', 'letters', [['', 'usual'], ['large', 'large']], look('data-letters'))); }
    choices.forEach(function (c) { bar.appendChild(c.box); });
    if (players) {
      var print = make('button', 'Print', { type: 'button' });
      print.addEventListener('click', function () { window.print(); });
      bar.appendChild(print);
    }
    var anyRow = videoLinks(page);
    if ((marks(page) || anyRow) && typeof SERVED === 'undefined') {
      var open = make('button', 'Open a game file', { type: 'button' });
      open.addEventListener('click', VIDEO.open);
      bar.appendChild(open);
    }
    var nav = page.querySelector('nav.pages');
    nav.parentNode.insertBefore(bar, nav.nextSibling);
    var sheets = [];
    each(':not(.one) > .scroll > table', function (t) {
      // A table with a script of its own is written anew when the reader picks something else.
      if (!t.hasAttribute('data-own') && t.tBodies[0].rows.length >= FEWEST) {
        var s = new Sheet(t, sheets.length, page);
        sheets.push(s);
        s.build();
      }
    }, page);
    FIT.watch(page);
    return { element: page, sheets: sheets, show: function () {
      choices.forEach(function (c) { c.show(); });
      sheets.forEach(function (s) { s.show(); });
    } };
  }
  // In a book of one file, one page at a time; each is made ready when it is first opened.
  var parts = Array.prototype.slice.call(document.querySelectorAll('.sheet'));
  var ready = new Map();
  var shown;
  VIDEO.panel();
  function show() {
    var named = parts.filter(function (p) { return p.id && p.id === address().page; })[0];
    // An address of nowhere, as of a clip, leaves the page that is open; none at all is the first page's.
    var page = named || (shown && location.hash ? shown.element : parts[0]);
    var turned = shown && shown.element !== page;
    parts.forEach(function (p) { p.hidden = p !== page; });
    if (!ready.has(page)) { ready.set(page, start(page)); }
    shown = ready.get(page);
    if (page.id) { document.title = page.getAttribute('data-title'); }
    shown.show();
    var e = address().rest.indexOf('=') < 0 && address().rest && document.getElementById(location.hash.slice(1));
    if (e) {
      unfold(e);
      e.scrollIntoView();
    } else if (turned) { window.scrollTo(0, 0); }
  }
  show();
  window.addEventListener('hashchange', show);
  window.addEventListener('beforeprint', function () {
    // Paper has no folds: flags print whole, what is to be looked at as a line, long tables stay away.
    each('details.flag:not(.look):not(.near)', function (d) { d.open = true; });
  });
  document.addEventListener('keydown', function (e) {
    var typing = /^(INPUT|SELECT|TEXTAREA)$/.test(e.target.tagName);
    var first = shown.sheets.filter(function (s) { return s.picks.controls.length > 0; })[0];
    if (e.key === '/' && !typing && first) {
      e.preventDefault();
      first.focus();
    } else if (e.key === 'Escape' && e.target.type === 'search') {
      e.target.value = '';
      e.target.dispatchEvent(new Event('input'));
    }
  });
  // For a page's own script; in one file ids have their page before them.
  function at(id) { return document.getElementById(id) || document.querySelector('[id$=":' + id + '"]'); }
  return { make: make, state: state, keep: keep, at: at, inUnits: inUnits, onUnits: function (t) { told.push(t); } };
})();
