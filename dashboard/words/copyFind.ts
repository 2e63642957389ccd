export const FIND_COPY_IT = "Copy it";

export const FIND_WHAT_IF = "Copy to ask what if";
