package org.thalweg.api.batch;

/** Why a batch can not go on, in words for whoever started it. */
final class BatchFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BatchFailure(String message) {
        super(message);
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
