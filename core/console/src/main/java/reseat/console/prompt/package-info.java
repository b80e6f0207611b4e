/**
 * The scripting console: an interactive session in JavaScript and in Java.
 *
 * <p>A {@link reseat.console.prompt.Session} runs input on its own thread and returns {@link
 * reseat.console.prompt.Evaluation}s; it is independent of terminals. The {@link
 * reseat.console.prompt.Prompt} reads and shows.
 */
package reseat.console.prompt;
