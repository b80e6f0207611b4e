/** The plugin, and its commands about fasteners. */
package reseat.fasteners;
