package wrong.internal.read;

public class AllRight {
    public foreign.Tree tree;
    wrong.model.Device device;
}
