/** Plans as text for the bench. Text alone: where it goes is the command's. */
@org.jspecify.annotations.NullMarked
package reseat.console.sheet;
