"""The flaws by their numbers: how each is drawn, in how many looks, and which lies over which."""
import bench_flaws_body as fb
import bench_flaws_spots as fs

FUN = [fs.coloured_specks, fs.smears, fs.white_specks, fb.translucent_veins, fb.crackle_network, fb.powdery_film, fb.dark_centre_ring,
       fs.orange_spots, fs.pinholes, fb.crack, fb.brown_outside_in, fb.colour_bled, fs.drag_lines, fb.layer_gap, fb.wrinkled_top, fb.mould_dimples]
NVAR = [4, 3, 3, 3, 3, 4, 4, 3, 4, 4, 4, 3, 4, 3, 3, 3]
ORDER = [6, 10, 11, 3, 4, 1, 0, 2, 7, 12, 8, 14, 15, 9, 13, 5]
