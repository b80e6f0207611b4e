/** Helpers for tests: text compared with a kept file. They need no particular test framework. */
package reseat.testkit;
