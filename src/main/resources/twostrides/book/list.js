// The meeting list: clips in an order, each with a note, kept by the browser for this book's games.
var LIST = (function () {
  'use strict';
  var KEY = 'list-' + GAMES.key;
  var FORM = 'two-strides meeting list';
  var watchers = [];
  var clips = read(KIT.remembered(KEY)) || [];

  // A list, or null where the text is none.
  function read(text) {
    try {
      var all = JSON.parse(text);
      if (all.form !== FORM || !Array.isArray(all.clips)) { return null; }
      return all.clips.filter(function (c) { return typeof c.game === 'string' && isFinite(c.at); }).map(function (c) {
        return { game: c.game, at: +c.at, title: String(c.title || ''), source: String(c.source || ''), note: String(c.note || '') };
      });
    } catch (e) { return null; }
  }
  function text() { return JSON.stringify({ form: FORM, book: GAMES.key, clips: clips }, null, 1) + '\n'; }
  function tell() { watchers.forEach(function (w) { w(); }); }
  function keep(now) {
    clips = now;
    KIT.remember(KEY, text());
    tell();
  }
  // A row knows whole seconds, a mark tenths: less than a second apart is the same.
  function same(a, b) { return a.game === b.game && (a.source && a.source === b.source || Math.abs(a.at - b.at) < 1); }
  function has(clip) { return clips.some(function (c) { return same(c, clip); }); }
  function add(more) {
    var now = clips.slice();
    more.forEach(function (m) {
      if (!now.some(function (c) { return same(c, m); })) {
        now.push({ game: m.game, at: m.at, title: m.title || '', source: m.source || '', note: m.note || '' });
      }
    });
    keep(now);
  }
  function toggle(clip) {
    if (has(clip)) { keep(clips.filter(function (c) { return !same(c, clip); })); } else { add([clip]); }
  }
  function button(clip) {
    var b = KIT.make('button', '', { type: 'button', 'class': 'put' });
    function show() {
      b.setAttribute('aria-pressed', String(has(clip)));
      b.setAttribute('aria-label', 'On the meeting list: ' + clip.game + ', ' + KIT.stamp(clip.at));
    }
    b.addEventListener('click', function () { toggle(clip); });
    watchers.push(show);
    show();
    return b;
  }
  // A list that lies in the book's folder, where the book is shown from there and the browser has none.
  if (clips.length === 0 && typeof SERVED !== 'undefined' && SERVED.list) { keep(read(SERVED.list) || []); }
  window.addEventListener('storage', function (e) {
    if (e.key === 'two-strides-' + KEY) { clips = read(e.newValue) || []; tell(); }
  });
  function count() {
    var a = document.querySelector('nav.pages a[href$="meeting.html"]');
    if (a) { a.textContent = 'Meeting' + (clips.length > 0 ? ' (' + clips.length + ')' : ''); }
  }
  watchers.push(count);
  count();
  return {
    all: function () { return clips.slice(); },
    keep: keep, has: has, same: same, add: add, toggle: toggle, button: button, read: read, text: text, tell: tell,
    watch: function (w) { watchers.push(w); }
  };
})();
