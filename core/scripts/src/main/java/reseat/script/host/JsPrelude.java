package reseat.script.host;

/** What is run in each context before anything else: it takes away more than it brings. */
final class JsPrelude {

    /**
     * Takes away clock, dice, the memory shared between threads and what would make a run depend on
     * the collector. Lets lists and maps answer to the names that Java has for it; how many a map
     * has is {@code map.size} here, without parentheses. Gives back a function that makes the
     * constants of one enum known by the name that Java calls it by; called with an empty name, it
     * closes them all.
     */
    static final String SOURCE =
            """
            (function () {
              for (const name of ['Date', 'Intl', 'Temporal', 'performance', 'SharedArrayBuffer', 'Atomics',
                  'WeakRef', 'FinalizationRegistry', 'WebAssembly', 'arguments', 'printErr']) {
                delete globalThis[name];
              }
              delete Math.random;
              const say = (on, name, value) => Object.defineProperty(on, name, { value });
              say(Array.prototype, 'size', function () { return this.length; });
              say(Array.prototype, 'get', function (i) { return this[i]; });
              say(Array.prototype, 'isEmpty', function () { return this.length === 0; });
              say(Array.prototype, 'contains', function (x) { return this.includes(x); });
              say(Map.prototype, 'containsKey', function (key) { return this.has(key); });
              say(Map.prototype, 'isEmpty', function () { return this.size === 0; });
              const fixed = { writable: false, configurable: false, enumerable: true };
              const spaces = [];
              return function (name, names, constants) {
                if (name === '') {
                  spaces.forEach(Object.freeze);
                  return;
                }
                const words = name.split('.');
                let at = globalThis;
                for (const word of words) {
                  if (!Object.hasOwn(at, word)) {
                    const space = Object.create(null);
                    spaces.push(space);
                    Object.defineProperty(at, word, { ...fixed, value: space });
                  }
                  at = at[word];
                }
                for (let i = 0; i < names.length; i++) {
                  Object.defineProperty(at, names[i], { ...fixed, value: constants[i] });
                }
              };
            })()
            """;

    private JsPrelude() {}
}
