/** Starts a command and turns whatever happens into an exit code and a readable message. */
package reseat.console;
