package reseat.internal.files;

import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import reseat.model.Origin;
import reseat.text.QuoteText;

/** Feeds a {@link TreeBuilder} from YAML 1.2, scalars resolved by its core schema. */
final class YamlEvents {

    private static final Pattern NUMBER =
            Pattern.compile(
                    "[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?|0o[0-7]+|0x[0-9a-fA-F]+");
    private static final Set<String> NULLS = Set.of("", "~", "null", "Null", "NULL");
    private static final Set<String> BOOLS =
            Set.of("true", "True", "TRUE", "false", "False", "FALSE");

    private final String name;
    private final TreeBuilder builder;
    private final Map<String, Optional<Node>> anchors = new HashMap<>();
    private final ArrayDeque<Optional<String>> open = new ArrayDeque<>();
    private int documents;

    private YamlEvents(String name, TreeBuilder builder) {
        this.name = name;
        this.builder = builder;
    }

    static void feed(String name, String text, TreeBuilder builder) throws TreeException {
        YamlEvents events = new YamlEvents(name, builder);
        LoadSettings settings =
                LoadSettings.builder()
                        .setLabel(name)
                        .setCodePointLimit(Sources.MAX_BYTES)
                        .setUseMarks(true)
                        .build();
        Event last = null;
        try {
            ParserImpl parser = new ParserImpl(settings, new StreamReader(settings, text));
            while (parser.hasNext()) {
                last = parser.next();
                events.take(last);
            }
        } catch (MarkedYamlEngineException e) {
            throw new TreeException(
                    events.place(e.getProblemMark().or(e::getContextMark)),
                    "this is not YAML: " + words(e));
        } catch (YamlEngineException e) {
            throw new TreeException(
                    events.place(last == null ? Optional.empty() : last.getEndMark()),
                    "this is not YAML: " + e.getMessage());
        }
    }

    private void take(Event event) throws TreeException {
        switch (event.getEventId()) {
            case DocumentStart -> {
                if (++documents > 1) {
                    throw new TreeException(
                            place(event), "a second document begins here; a file holds one device");
                }
            }
            case MappingStart, SequenceStart -> {
                CollectionStartEvent start = (CollectionStartEvent) event;
                plainTag(event, start.getTag());
                builder.begin(place(event), event.getEventId() == Event.ID.MappingStart);
                Optional<String> anchor = anchor(start);
                // until it ends, an alias to it would be recursive
                anchor.ifPresent(id -> anchors.put(id, Optional.empty()));
                open.push(anchor);
            }
            case MappingEnd, SequenceEnd -> {
                Node done = builder.end();
                open.pop().ifPresent(id -> anchors.put(id, Optional.of(done)));
            }
            case Scalar -> {
                ScalarEvent scalar = (ScalarEvent) event;
                plainTag(event, scalar.getTag());
                Node.Scalar node = new Node.Scalar(place(event), kind(scalar), scalar.getValue());
                anchor(scalar).ifPresent(id -> anchors.put(id, Optional.of(node)));
                builder.scalar(node);
            }
            case Alias -> alias((AliasEvent) event);
            default -> {
                // stream and document boundaries carry no data
            }
        }
    }

    private void alias(AliasEvent event) throws TreeException {
        String id = event.getAlias().getValue();
        Optional<Node> target = anchors.get(id);
        if (target == null) {
            throw new TreeException(
                    place(event),
                    "alias *"
                            + id
                            + " has no anchor &"
                            + id
                            + " before it."
                            + Words.hint(
                                    id, anchors.keySet().stream().sorted().toList(), "anchors"));
        }
        builder.again(
                place(event),
                target.orElseThrow(
                        () ->
                                new TreeException(
                                        place(event), "alias *" + id + " contains itself")));
    }

    private static Optional<String> anchor(NodeEvent event) {
        return event.getAnchor().map(anchor -> anchor.getValue());
    }

    private void plainTag(Event event, Optional<String> tag) throws TreeException {
        // "!" alone only says "not resolved", as quotes do
        if (tag.isPresent() && !tag.get().equals("!")) {
            throw new TreeException(
                    place(event),
                    "tag " + QuoteText.of(tag.get()) + " is not supported in a device file");
        }
    }

    private static Node.ScalarKind kind(ScalarEvent scalar) {
        String text = scalar.getValue();
        if (!scalar.isPlain() || scalar.getTag().isPresent()) {
            return Node.ScalarKind.TEXT;
        }
        if (NULLS.contains(text)) {
            return Node.ScalarKind.NULL;
        }
        if (BOOLS.contains(text)) {
            return Node.ScalarKind.BOOL;
        }
        // most texts are ids and words, and the regular expression is slow
        char first = text.charAt(0);
        boolean maybe = first <= '9' && first >= '+';
        return maybe && text.length() < 1000 && NUMBER.matcher(text).matches()
                ? Node.ScalarKind.NUMBER
                : Node.ScalarKind.TEXT;
    }

    private static String words(MarkedYamlEngineException e) {
        String context = e.getContext();
        return (context == null || context.isBlank() ? "" : context + ": ") + e.getProblem();
    }

    private Origin place(Event event) {
        return place(event.getStartMark());
    }

    private Origin place(Optional<Mark> mark) {
        return mark.map(m -> new Origin(name, m.getLine() + 1, m.getColumn() + 1))
                .orElse(new Origin(name, 0, 0));
    }
}
