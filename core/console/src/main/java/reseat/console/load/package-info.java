/** Finds plugins and the personal folders of the user. */
package reseat.console.load;
