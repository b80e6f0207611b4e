/** Plans as text for the bench. Only the text: its destination is up to the command. */
@org.jspecify.annotations.NullMarked
package reseat.console.sheet;
