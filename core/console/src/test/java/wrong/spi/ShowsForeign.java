package wrong.spi;

public class ShowsForeign {
    public foreign.Tree tree() {
        return new foreign.Tree();
    }
}
