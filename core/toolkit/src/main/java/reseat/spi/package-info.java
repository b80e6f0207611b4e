/** The plugin interface: the toolkit's version, and the services that a plugin can provide. */
package reseat.spi;
