// What all scripts of a page need. Text from sheets is only ever set as text.
var KIT = (function () {
  'use strict';
  function make(tag, words, attributes) {
    var e = document.createElement(tag);
    if (words) { e.textContent = words; }
    Object.keys(attributes || {}).forEach(function (k) { e.setAttribute(k, attributes[k]); });
    return e;
  }
  function words(cell) { return cell ? cell.textContent.replace(/\u00a0/g, ' ').trim() : ''; }
  // Hours, minutes and seconds of a video.
  function seconds(text) {
    var m = /^(\d+):(\d\d):(\d\d)$/.exec(text);
    return m ? +m[1] * 3600 + +m[2] * 60 + +m[3] : NaN;
  }
  function stamp(s) {
    var whole = Math.floor(s);
    function two(n) { return (n < 10 ? '0' : '') + n; }
    return two(Math.floor(whole / 3600)) + ':' + two(Math.floor(whole / 60) % 60) + ':' + two(whole % 60);
  }
  var here = {}; // where the browser keeps nothing for files, at least until the page is closed
  function remembered(key) {
    try { return localStorage.getItem('two-strides-' + key) || ''; } catch (e) { return here[key] || ''; }
  }
  function remember(key, value) {
    here[key] = value;
    try { localStorage.setItem('two-strides-' + key, value); } catch (e) { /* the page works without */ }
  }
  function save(name, type, text) {
    var url = URL.createObjectURL(new Blob([text], { type: type }));
    var a = make('a', '', { href: url, download: name });
    document.body.appendChild(a);
    a.click();
    a.remove();
    setTimeout(function () { URL.revokeObjectURL(url); }, 1000);
  }
  return { make: make, words: words, seconds: seconds, stamp: stamp, remembered: remembered, remember: remember, save: save };
})();
