/**
 * The scripting console: an interactive session in JavaScript and in Java.
 *
 * <p>A {@link reseat.console.prompt.Session} runs what is typed on a thread of its own and hands
 * back {@link reseat.console.prompt.Evaluation}s; it knows no terminal. The {@link
 * reseat.console.prompt.Prompt} reads and shows.
 */
package reseat.console.prompt;
