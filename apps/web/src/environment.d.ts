/** True in development, or in a build made with VITE_GALLERY=1; false removes the gallery's code. */
declare const __GALLERY__: boolean;
