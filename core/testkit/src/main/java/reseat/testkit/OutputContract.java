package reseat.testkit;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import reseat.spi.Output;
import reseat.spi.OutputFiles;
import reseat.testkit.PluginContract.Breaches;

/** The contract of one output that writes one plan. */
final class OutputContract {

    private static final String FULL = "no space left in the test destination";

    private final Output output;
    private final Output.Content content;
    private final Breaches breaches;
    private final String name;

    OutputContract(Output output, Output.Content content, Breaches breaches) {
        this.output = output;
        this.content = content;
        this.breaches = breaches;
        this.name = "output " + output.id();
    }

    void verify() {
        if (!output.mediaType().matches("[a-z]+/[a-z0-9.+-]+(;.*)?")) {
            breaches.add(name + ": \"" + output.mediaType() + "\" is not a media type");
        }
        Map<String, byte[]> once = files();
        Map<String, byte[]> again = files();
        if (!List.copyOf(once.keySet()).equals(List.copyOf(again.keySet()))) {
            breaches.add(name + " writes other files the second time: " + once.keySet());
        }
        once.forEach(
                (file, bytes) -> {
                    if (bytes.length == 0) {
                        breaches.add(name + " writes nothing into " + file);
                    }
                    if (!Arrays.equals(bytes, again.get(file))) {
                        breaches.add(
                                name + " writes other bytes into " + file + " the second time");
                    }
                });
        for (Failing place : Failing.values()) {
            try {
                output.write(content, place);
                breaches.add(name + " hides that its destination fails when it is " + place.when);
            } catch (IOException e) {
                if (!FULL.equals(e.getMessage())) {
                    breaches.add(name + " throws another exception than its destination: " + e);
                }
            }
        }
    }

    private Map<String, byte[]> files() {
        try {
            return OutputFiles.of(output, content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Destinations that fail at different moments. */
    private enum Failing implements Output.Place {
        AT_ONCE("opened"),
        IN_USE("written to"),
        AT_THE_END("closed");

        private final String when;

        Failing(String when) {
            this.when = when;
        }

        @Override
        public OutputStream single() throws IOException {
            if (this == AT_ONCE) {
                throw new IOException(FULL);
            }
            return new OutputStream() {
                @Override
                public void write(int b) throws IOException {
                    if (Failing.this == IN_USE) {
                        throw new IOException(FULL);
                    }
                }

                @Override
                public void close() throws IOException {
                    if (Failing.this == AT_THE_END) {
                        throw new IOException(FULL);
                    }
                }
            };
        }

        @Override
        public OutputStream file(String name) throws IOException {
            return single();
        }
    }
}
