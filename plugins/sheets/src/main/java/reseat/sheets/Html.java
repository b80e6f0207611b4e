package reseat.sheets;

/** Writes HTML; all text is escaped. */
final class Html {

    private final StringBuilder out = new StringBuilder();

    /** Appends our own markup unescaped. */
    Html raw(String markup) {
        out.append(markup).append('\n');
        return this;
    }

    /** Appends an element with a text. */
    Html element(String tag, String style, String text) {
        out.append('<').append(tag);
        if (!style.isEmpty()) {
            out.append(" class=\"").append(style).append('"');
        }
        out.append('>').append(escaped(text)).append("</").append(tag).append(">\n");
        return this;
    }

    /** Appends a text. */
    Html text(String text) {
        out.append(escaped(text)).append('\n');
        return this;
    }

    /** Appends an element with a box to tick before its text. */
    Html boxed(String tag, String text) {
        out.append('<')
                .append(tag)
                .append("><span class=\"box\"></span>")
                .append(escaped(text))
                .append("</")
                .append(tag)
                .append(">\n");
        return this;
    }

    /** Appends a row of a table with a heading. */
    Html row(String heading, String text) {
        out.append("<tr><th>")
                .append(escaped(heading))
                .append("</th><td>")
                .append(escaped(text))
                .append("</td></tr>\n");
        return this;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    String text() {
        return out.toString();
    }
}
