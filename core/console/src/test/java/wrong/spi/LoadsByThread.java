package wrong.spi;

import java.util.ServiceLoader;

public class LoadsByThread {
    Object load() {
        return ServiceLoader.load(Runnable.class);
    }
}
