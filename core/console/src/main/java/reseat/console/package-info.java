/** Starts a command and turns its result into an exit code and a readable message. */
package reseat.console;
