/** What a plugin meets: the toolkit's version, and the services a plugin can offer. */
package reseat.spi;
