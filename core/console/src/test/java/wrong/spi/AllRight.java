package wrong.spi;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Locale;
import java.util.Random;

public class AllRight {
    public String text(byte[] bytes, long seed) {
        return String.format(Locale.ROOT, "%d", new Random(seed).nextInt())
                + new String(bytes, UTF_8);
    }
}
