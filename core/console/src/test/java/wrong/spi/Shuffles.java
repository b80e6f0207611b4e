package wrong.spi;

import java.util.Collections;
import java.util.List;

public class Shuffles {
    void shuffle(List<String> list) {
        Collections.shuffle(list);
    }
}
