package reseat.files;

import java.util.List;
import java.util.Map;
import reseat.internal.files.JobReader;
import reseat.job.Job;
import reseat.model.Device;
import reseat.model.Ordered;
import reseat.model.Origin;
import reseat.model.Problem;

/**
 * The contents of a job file.
 *
 * @param job the job; not yet checked against any device
 * @param origins locations of its facts, by JSON Pointer into the file; the empty pointer is the
 *     whole file
 */
public record JobFile(Job job, Map<String, Origin> origins) {

    public JobFile {
        origins = Ordered.copyOf(origins);
    }

    /** Returns the errors if the unit is of this device, with their locations. */
    public List<Problem> problems(Device device) {
        return JobReader.problems(this, device);
    }
}
