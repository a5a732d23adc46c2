import { stubServer } from './stub-server.js';

// Left out of the product's build together with the gallery.
if (__GALLERY__) stubServer();
