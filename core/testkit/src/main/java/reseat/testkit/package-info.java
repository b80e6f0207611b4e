/**
 * Test support: contracts of plugins and stocks, trial runs of commands, comparison with kept
 * files. It needs no particular test framework.
 */
package reseat.testkit;
