/** Where rows would stand that are out of sight. */
export const Room = ({ px }: { px: number }) => <tr aria-hidden style={{ height: px }} />
