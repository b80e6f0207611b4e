package wrong.plugins;

public class AllRight {
    wrong.model.Device device;
    foreign.Tree tree;
}
