/** How answers are laid out: values as JSON, cells below each other. Knows nothing of ours. */
package reseat.text;
