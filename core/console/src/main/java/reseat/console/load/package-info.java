/** The plugins of this process. */
package reseat.console.load;
