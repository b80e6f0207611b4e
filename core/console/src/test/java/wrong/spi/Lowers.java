package wrong.spi;

import java.util.function.Function;

public class Lowers {
    Function<String, String> lower() {
        return String::toLowerCase;
    }
}
