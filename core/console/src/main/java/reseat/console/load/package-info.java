/** What this process finds by itself: plugins, and the folders of the person who runs it. */
package reseat.console.load;
