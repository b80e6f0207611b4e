package wrong.internal.files;

public class AllRight {
    public foreign.Tree tree;
    wrong.model.Device device;
}
