/** The commands, one class each; {@link reseat.console.command.ReseatCommand} lists them. */
package reseat.console.command;
