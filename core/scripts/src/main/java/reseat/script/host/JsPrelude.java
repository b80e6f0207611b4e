package reseat.script.host;

/** The code that runs first in each context and removes unsafe features. */
final class JsPrelude {

    /**
     * Removes the clock, randomness, shared memory and everything that would make a run depend on
     * the garbage collector. Gives lists and maps their Java method names; the size of a map is
     * {@code map.size}, without parentheses. Returns a function that defines the constants of one
     * enum under its Java name; called with an empty name, it freezes them all.
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
